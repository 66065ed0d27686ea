/** The fields of a job, as it comes in a file or from the panel. */
import { InputError } from "../calc/errors";
import type { JobInput } from "../template/job";
import { type Fields, mistakesIn } from "./fields";

const length = { is: "length" } as const;
const maybeLength = { is: "length", optional: true } as const;

const maybeNumber = { is: "number", optional: true } as const;

/** Corners of an L, sides of a U. */
const PLACES = [
	"front left",
	"front right",
	"back left",
	"back right",
	"front",
	"back",
	"left",
	"right",
];

const PIECE: Fields = {
	name: { is: "text" },
	quantity: { is: "number" },
	shape: { is: "text" },
	a: length,
	b: maybeLength,
	c: maybeLength,
	d: maybeLength,
	thickness: length,
	dropHeight: maybeLength,
	dropRun: maybeLength,
	dropThickness: maybeLength,
	face: { is: "word", words: ["face up", "face down"], optional: true },
	notch: { is: "word", words: PLACES, optional: true },
	dropOn: { is: "text", optional: true },
};
const CUTOUT: Fields = {
	piece: { is: "text" },
	count: { is: "number" },
	shape: { is: "text" },
	a: length,
	b: maybeLength,
};
const KNOCKOUT: Fields = {
	piece: { is: "text" },
	what: { is: "text" },
	volume: maybeNumber,
	a: maybeLength,
	b: maybeLength,
	depth: maybeLength,
	mass: maybeNumber,
	count: maybeNumber,
	held: maybeNumber,
};
const TONE: Fields = {
	name: { is: "text" },
	share: { is: "share", optional: true },
	doses: { is: "shares by name" },
};
const JOB: Fields = {
	about: { is: "anything" },
	units: { is: "word", words: ["metric", "us"] },
	client: { is: "text" },
	title: { is: "text" },
	pourDate: { is: "day", optional: true },
	dueDate: { is: "day", optional: true },
	mix: { is: "text" },
	waste: { is: "share", optional: true },
	pieces: { is: "rows", of: PIECE, least: 1, most: 20 },
	cutouts: { is: "rows", of: CUTOUT, least: 0, most: 12, optional: true },
	knockouts: { is: "rows", of: KNOCKOUT, least: 0, most: 8, optional: true },
	tones: { is: "rows", of: TONE, least: 1, most: 6 },
};

/** The job, when its fields are there and of the right kind. @throws InputError with a line for each that is not. */
export function checkedFields(input: unknown): JobInput {
	const mistakes = mistakesIn(input, JOB);
	if (mistakes.length > 0) throw new InputError(mistakes.join("\n"));
	return input as JobInput;
}
