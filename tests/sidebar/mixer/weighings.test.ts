import fc from "fast-check";
import { expect, test } from "vitest";
import type { CardCell } from "../../../src/sheets/messages";
import {
	changedPlaces,
	samePlace,
	typedAt,
	withWeighing,
} from "../../../src/sidebar/mixer/weighings";
import { JOB_FILE, pour } from "./card";

const cells: fc.Arbitrary<CardCell> = fc.oneof(
	fc.constantFrom("Dry mix", "Water", "Ice, crushed").map((weighed) => ({
		weighed,
	})),
	fc.nat(20).map((step) => ({ step })),
	fc
		.tuple(
			fc.integer({ min: 1, max: 4 }),
			fc.constantFrom(
				"tone" as const,
				"foldedIn" as const,
				"takenOut" as const,
			),
		)
		.map(([correction, part]) => ({ correction, part })),
	fc
		.constantFrom("spread", "waterInAt", "remarks")
		.map((note) => ({ note }) as CardCell),
);
const weighings = fc.record({
	load: fc.integer({ min: 1, max: 8 }),
	cell: cells,
	value: fc.oneof(fc.nat(500), fc.constantFrom("a bag", "14:05")),
	planNumber: fc.constantFrom<"" | number>("", 4711),
});

test("what is laid over stands at its place, and nowhere else", () => {
	fc.assert(
		fc.property(weighings, weighings, (one, other) => {
			fc.pre(!samePlace(one, other));
			const job = withWeighing(JOB_FILE, one);
			expect(typedAt(job, one)).toBe(one.value);
			expect(typedAt(job, other)).toBe(typedAt(JOB_FILE, other));
			expect(typedAt(withWeighing(job, other), one)).toBe(one.value);
		}),
	);
});

test("a blank takes it out again, and the file that was given stays as it was", () => {
	const before = structuredClone(JOB_FILE);
	fc.assert(
		fc.property(weighings, (weighing) => {
			const job = withWeighing(JOB_FILE, weighing);
			const undone = withWeighing(job, { ...weighing, value: "" });
			expect(typedAt(undone, weighing)).toBe("");
			expect(changedPlaces(JOB_FILE, undone)).toEqual([]);
			expect(JOB_FILE).toEqual(before);
		}),
	);
});

test("what was added stands as one text, with its pigment", () => {
	const place = { load: 1, cell: { correction: 2, part: "added" } } as const;
	const job = withWeighing(JOB_FILE, {
		...place,
		value: "Umber 12.5; Black 3",
		planNumber: "",
	});
	expect(job.pours?.find(({ load }) => load === 1)?.corrections).toEqual([
		{},
		{ added: { Umber: 12.5, Black: 3 } },
	]);
	expect(typedAt(job, place)).toBe("Umber 12.5; Black 3");
});

test("the number of the plan is written with the first weight, and kept", () => {
	const first = withWeighing(JOB_FILE, {
		load: 1,
		cell: { weighed: "Water" },
		value: 22,
		planNumber: 4711,
	});
	expect(first.pours?.[0]).toEqual(
		pour(1, { weighed: { Water: 22 }, planNumber: 4711 }),
	);
	const next = withWeighing(first, {
		load: 1,
		cell: { step: 1 },
		value: 500,
		planNumber: 4712,
	});
	expect(next.pours?.[0]?.planNumber).toBe(4711);
	const note = withWeighing(JOB_FILE, {
		load: 1,
		cell: { note: "lots" },
		value: "B7",
		planNumber: 4711,
	});
	expect(note.pours?.[0]?.planNumber).toBeUndefined();
});

test("an ingredient is the same whatever its letters' case", () => {
	const job = withWeighing(
		{ ...JOB_FILE, pours: [pour(1, { weighed: { WATER: 20 } })] },
		{ load: 1, cell: { weighed: "Water" }, value: 22, planNumber: "" },
	);
	expect(job.pours?.[0]?.weighed).toEqual({ Water: 22 });
});

test("weights that differ are found in both, notes are none", () => {
	const after = {
		...JOB_FILE,
		pours: [pour(1, { weighed: { Water: 22 }, lots: "B7" }), pour(2)],
	};
	expect(changedPlaces(JOB_FILE, after)).toEqual([
		{ load: 1, cell: { weighed: "Water" } },
	]);
	expect(changedPlaces(after, JOB_FILE)).toHaveLength(1);
});
