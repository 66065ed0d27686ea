import { expect, test } from "vitest";
import {
	minutesLeft,
	minutesSince,
	timeOfDay,
} from "../../../src/sidebar/mixer/working-time";

test.each([
	["14:05", 60, "14:05", 60],
	["14:05", 60, "14:50", 15],
	["14:05", 60, "15:10", -5],
	["23:50", 45, "00:10", 25],
	// the phone's clock is a minute behind the laptop's
	["14:05", 60, "14:04", 61],
	["9:05:00", 30, "09:20", 15],
])("water in at %s, %d min, now %s: %d left", (waterIn, working, now, left) => {
	expect(minutesLeft(waterIn, working, now)).toBe(left);
});

test("nobody knows without a time", () => {
	expect(minutesLeft("", 60, "14:00")).toBeUndefined();
	expect(minutesLeft("noon", 60, "14:00")).toBeUndefined();
});

test("a cell may count a time as a share of the day", () => {
	// 14:05 is 845 of 1440 minutes.
	expect(minutesLeft(845 / 1440, 60, "14:50")).toBe(15);
});

test("minutes since the water went in need no working time", () => {
	expect(minutesSince("23:50", "00:10")).toBe(20);
	expect(minutesSince("noon", "14:00")).toBeUndefined();
});

test("a part of a minute is not counted on", () => {
	expect(minutesLeft("14:05", 42.7, "14:10")).toBe(37);
});

test("a time of day has two digits each", () => {
	expect(timeOfDay(new Date(2026, 4, 4, 9, 5))).toBe("09:05");
});
