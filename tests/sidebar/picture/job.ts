import type { JobView } from "../../../src/sheets/messages";

/** An invented job of round numbers: an L cast face down, a tray cast face up. */
export const JOB: JobView = {
	number: 14,
	title: "Two pieces, invented",
	units: "metric",
	pieces: [
		["Bar", 1, "L", 2000, "1 m", 1200, 400, 40, "", "", ""],
		["Tray", 2, "basin", 500, 400, 120, "", 20, "", "", ""],
		["", "", "", "", "", "", "", "", "", "", ""],
	],
	faces: ["face down", "face up", ""],
	notches: ["", "", ""],
	cutouts: [["bar", 1, "rectangle", 500, 400]],
	tones: [
		{ name: "Shell", share: 3, color: "#d9d3c8", doses: {} },
		{ name: "Bark", share: 1, color: "#7a5d47", doses: {} },
	],
	mix: "Plain mix",
};
