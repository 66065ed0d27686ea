/** A job's data as the cells of its tabs. */
import { InputError } from "../calc/errors";
import { sameName } from "../calc/names";
import type {
	CutoutInput,
	JobInput,
	KnockoutInput,
	PieceInput,
	ToneInput,
	UnitSystem,
} from "../template/job";
import type { Slots, Value } from "../template/plan";
import { checkKnockouts, checkMolds, checkPieces, checkTones } from "./check";
import { serialDay } from "./days";
import { isAbsent } from "./fields";

/** What the studio has, to hold a job against. */
export interface Known {
	units: UnitSystem;
	/** Once the workbook has them they cannot be others. */
	unitsFixed: boolean;
	mixes: readonly string[];
	pigments: readonly string[];
	waste: Value;
}

const MOST_PIGMENTS = 4;

/** Bands, folds and distance that a job begins with; of no source, to be replaced. */
const FOLDING: Readonly<Record<UnitSystem, Slots>> = {
	metric: { band_start: "40", folds: 3, seen_from: "2 m" },
	us: { band_start: "1 1/2", folds: 3, seen_from: "6 ft" },
};

/**
 * The data for the named blocks of a job's tabs.
 *
 * @throws InputError for a job that this workbook, or the trade's arithmetic, refuses.
 */
export function jobSlots(job: JobInput, known: Known): Slots {
	if (known.unitsFixed && job.units !== known.units)
		throw new InputError(
			`"units" is "${job.units}", but this workbook is in ${known.units}`,
		);
	const mix = oneOf("mix", job.mix, known.mixes, "the Mixes tab");
	const pigments = pigmentsOf(job.tones, known.pigments);
	const pieces = job.pieces.map(pieceRow);
	const cutouts = (job.cutouts ?? []).map(cutoutRow);
	const knockouts = (job.knockouts ?? []).map(knockoutRow);
	const lie = job.pieces.map(({ face, notch, dropOn }) =>
		[face, notch, dropOn].map(given),
	);
	const tones = job.tones.map((tone) => toneRow(tone, pigments));
	checkPieces(pieces, cutouts, job.units);
	checkMolds(pieces, lie, job.units);
	checkKnockouts(knockouts, job.units);
	checkTones(tones, pigments, job.units);
	return {
		client: job.client,
		title: job.title,
		...dayIn("pour_date", job.pourDate),
		...dayIn("due_date", job.dueDate),
		waste: given(job.waste) === "" ? known.waste : given(job.waste),
		pieces,
		faces: lie.map((row) => row.slice(0, 1)),
		notches: lie.map((row) => row.slice(1, 2)),
		drop_sides: lie.map((row) => row.slice(2)),
		cutouts,
		knockouts,
		mix,
		pigments: [pigments],
		typed_tones: tones,
		...FOLDING[job.units],
	};
}

const given = (value: Value | null | undefined): Value =>
	isAbsent(value) ? "" : (value as Value);

const dayIn = (slot: string, day: string | undefined): Slots =>
	day === undefined || isAbsent(day) ? {} : { [slot]: serialDay(day) };

const pieceRow = (piece: PieceInput): Value[] =>
	[
		piece.name,
		piece.quantity,
		piece.shape,
		piece.a,
		piece.b,
		piece.c,
		piece.d,
		piece.thickness,
		piece.dropHeight,
		piece.dropRun,
		piece.dropThickness,
	].map(given);

const cutoutRow = ({ piece, count, shape, a, b }: CutoutInput): Value[] =>
	[piece, count, shape, a, b].map(given);

const knockoutRow = (knockout: KnockoutInput): Value[] =>
	[
		knockout.piece,
		knockout.what,
		knockout.volume,
		knockout.a,
		knockout.b,
		knockout.depth,
		knockout.mass,
		knockout.count,
		knockout.held,
	].map(given);

function toneRow(
	{ name, share, doses }: ToneInput,
	pigments: readonly string[],
): Value[] {
	const dosed = Object.entries(doses ?? {});
	return [
		name,
		given(share),
		...pigments.map((pigment) =>
			given(dosed.find(([key]) => sameName(key, pigment))?.[1]),
		),
	];
}

/** The studio's own spelling of a name. */
function oneOf(
	field: string,
	name: string,
	names: readonly string[],
	where: string,
): string {
	const found = names.find((known) => sameName(known, name));
	if (found === undefined)
		throw new InputError(
			`"${field}" is "${name}", which is not on ${where}: there are ${names.map((known) => `"${known}"`).join(", ")}`,
		);
	return found;
}

/** Pigments that a tone doses, in order of their first appearance. */
function pigmentsOf(
	tones: readonly ToneInput[],
	known: readonly string[],
): string[] {
	const named = tones.flatMap(({ doses }, index) =>
		Object.entries(doses ?? {})
			.filter(([, dose]) => !isAbsent(dose))
			.map(([name]) =>
				oneOf(`tones[${index}].doses`, name, known, "the Pigments tab"),
			),
	);
	const pigments = [...new Set(named)];
	if (pigments.length > MOST_PIGMENTS)
		throw new InputError(
			`the tones use ${pigments.length} pigments (${pigments.join(", ")}): there is room for ${MOST_PIGMENTS}`,
		);
	return pigments;
}
