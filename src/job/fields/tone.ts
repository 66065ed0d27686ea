/** The mix of a job, its tones, and how they are put into the piece. */
import {
	color,
	length,
	number,
	type Row,
	share,
	text,
	whole,
	word,
} from "./field";

export const FINISHES = ["cast", "honed", "polished"] as const;
export const SEALINGS = ["bare", "sealed"] as const;
export const STATES = ["dry", "damp"] as const;
export const PLACINGS = ["bucket fold", "mold lay-up"] as const;

export const LOOK = {
	mix: text("Mix", { required: true, from: "mixes" }),
	finish: word("Finish", FINISHES, { start: "cast" }),
	sealing: word("Sealing", SEALINGS, { start: "bare" }),
	state: word("Dry or damp", STATES, {
		start: "dry",
		help: "As the swatches were measured that say what color to expect.",
	}),
	placing: word("Bucket or lay-up", PLACINGS, { start: "bucket fold" }),
	faceDepth: length("Toned face, {length}", {
		help: "Of a mold lay-up: how deep the toned mix is.",
	}),
	backedWith: text("Backed with", {
		from: "tones",
		help: "Of a mold lay-up: the tone behind the face.",
	}),
	sampleNumber: text("Sample approved"),
	look: text("Look, your words", {
		help: "For the quote; blank: the tones and the finish.",
	}),
	bandStart: length("Bands at first, {length}", {
		start: { metric: "40", us: "1 1/2" },
	}),
	folds: whole("Folds", { start: 3 }),
	seenFrom: length("Seen from, {length}", {
		start: { metric: "2 m", us: "6 ft" },
	}),
	sampleMass: number("Make another size, {mass}", {
		unit: "mass",
		help: "Of the sample batch; blank: the smallest that the scales dose within 5% (k = 2).",
	}),
	wanted: color("Color wanted", {
		help: "As #b5a99a, or L*, a*, b* of a meter: the recipe for it stands on the right.",
	}),
};

/** A dose of each pigment stands beside it, under the pigment's name. */
export const TONE = {
	name: text("Tone", { required: true, also: ["name", "color"] }),
	share: share("Share", {
		help: "Of the whole batch; in a mold lay-up, of the toned face.",
	}),
};

export type LookRow = Row<typeof LOOK>;
export type ToneRow = Row<typeof TONE>;
