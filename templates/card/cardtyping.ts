/** What is typed on the Pour card: the load that it shows, and what happened to each load on pour day. */
import {
	CARD_ROWS,
	CORRECTION_PARTS,
	type CorrectionPart,
	correctionKey,
	stepKey,
	weighedKey,
} from "../../src/job/cells/jobcells";
import type { Field } from "../../src/job/fields/field";
import { ADDED, CORRECTION, POUR } from "../../src/job/fields/pour";
import { MOST } from "../../src/job/jobfile";
import { area, lettersOf, type Typing, typedAcross } from "../blocks";
import type { Block, Choice, Rule } from "../plan";

/** Column of the keys by which what is typed is found; it is out of sight. */
export const KEYS = "E";
const FIRST_LOAD = "F";
const LAST_LOAD = lettersOf(5 + MOST.pours - 1);

/** Rows of the card. */
export const HEADINGS = 4;
export const WEIGHED = 20;
export const STEPS = 66;
export const TONES = STEPS + CARD_ROWS.steps + 2;
export const CORRECTIONS = TONES + MOST.tones + 3;
const LAST = CORRECTIONS + MOST.corrections * CORRECTION_PARTS.length - 1;

/** The keys, and what was typed of each load under its heading. */
export const CARD_REGION = `${KEYS}${HEADINGS}:${LAST_LOAD}${LAST}`;

type PourField = keyof typeof POUR;

/** Row of each field of a load. */
const POUR_ROWS: Readonly<Record<PourField, number>> = {
	planNumber: 10,
	dryTemperature: 14,
	waterTemperature: 15,
	ice: 16,
	spread: 45,
	mixTemperature: 46,
	airTemperature: 47,
	humidity: 48,
	waterInAt: 49,
	lastPlacedAt: 50,
	weighedBy: 51,
	lots: 52,
	remarks: 53,
	result: 54,
	pouredOn: 55,
	finished: 56,
	bucketMass: 57,
};

const pourRows = Object.entries(POUR_ROWS) as [PourField, number][];

const typed: readonly Typing[] = pourRows.map(([key, row]) =>
	typedAcross({
		at: `${FIRST_LOAD}${row}`,
		slot: key,
		field: POUR[key],
		columns: MOST.pours,
	}),
);

const keys = (row: number, texts: readonly string[]): Block => ({
	at: `${KEYS}${row}`,
	look: "note",
	rows: texts.map((text) => [text]),
});

/** What the scale said. */
const weights = (row: number, rows: number, slot: string): Block => ({
	at: `${FIRST_LOAD}${row}`,
	look: "input",
	size: [rows, MOST.pours],
	formats: "weighed",
	slot,
});

const PART_FIELDS: Readonly<Record<CorrectionPart, Field>> = {
	...CORRECTION,
	added: ADDED,
};

/** Four rows a correction: of which tone, and what was done. */
const corrected: readonly Block[] = Array.from(
	{ length: MOST.corrections },
	(_, i) =>
		CORRECTION_PARTS.flatMap((part, down): Block[] => {
			const row = CORRECTIONS + i * CORRECTION_PARTS.length + down;
			const field = PART_FIELDS[part];
			return [
				{ at: `B${row}`, look: "label", rows: [[`${i + 1}: ${field.label}`]] },
				keys(row, [correctionKey(i + 1, part)]),
				{
					at: `${FIRST_LOAD}${row}`,
					look: "input",
					size: [1, MOST.pours],
					formats: field.kind === "weight" ? "weighed" : "text",
					...(field.help && { note: field.help }),
				},
			];
		}),
)
	.flat()
	.concat({
		at: `${FIRST_LOAD}${CORRECTIONS}`,
		look: "input",
		size: [MOST.corrections * CORRECTION_PARTS.length, MOST.pours],
		slot: "corrections",
	});

export const cardTyped: readonly Block[] = [
	{ at: "A3", look: "large", rows: [["Load"]] },
	{ at: "C3", look: "input", rows: [[1]], formats: "whole", name: "load" },
	{
		at: `${FIRST_LOAD}${HEADINGS}`,
		look: "heading",
		wrap: true,
		rows: [Array.from({ length: MOST.pours }, (_, i) => `Load ${i + 1}`)],
	},
	...pourRows.flatMap(([key, row]): Block[] => [
		{ at: `B${row}`, look: "label", rows: [[POUR[key].label]] },
		keys(row, [POUR[key].label]),
	]),
	...typed.flatMap(({ blocks }) => blocks),
	{ at: `${FIRST_LOAD}53`, look: "input", size: [1, MOST.pours], wrap: true },
	keys(
		WEIGHED,
		Array.from({ length: CARD_ROWS.weighed }, (_, i) => weighedKey(i + 1)),
	),
	weights(WEIGHED, CARD_ROWS.weighed, "weighed"),
	keys(
		STEPS,
		Array.from({ length: CARD_ROWS.steps }, (_, step) => stepKey(step)),
	),
	weights(STEPS, CARD_ROWS.steps, "steps"),
	...corrected,
];

const loadRows = (row: number, rows: number): string =>
	area(`${FIRST_LOAD}${row}`, rows, MOST.pours);

export const cardChoices: readonly Choice[] = [
	{
		range: "C3",
		list: Array.from({ length: MOST.pours }, (_, i) => String(i + 1)),
	},
	...typed.flatMap(({ choices }) => choices),
	...Array.from(
		{ length: MOST.corrections },
		(_, i): Choice => ({
			range: loadRows(CORRECTIONS + i * CORRECTION_PARTS.length, 1),
			from: "{at:Tones.tone_names}",
		}),
	),
];

/** Marks the column of the load that is chosen. */
export const chosenRule: Rule = {
	range: [
		loadRows(HEADINGS, 1),
		loadRows(POUR_ROWS.planNumber, 1),
		loadRows(POUR_ROWS.dryTemperature, 3),
		loadRows(WEIGHED, CARD_ROWS.weighed),
		loadRows(POUR_ROWS.spread, 13),
		loadRows(STEPS, CARD_ROWS.steps),
		loadRows(CORRECTIONS, MOST.corrections * CORRECTION_PARTS.length),
	].join(","),
	when: `=${FIRST_LOAD}$${HEADINGS}="Load "&$C$3`,
	look: "current",
};
