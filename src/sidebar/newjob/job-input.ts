/** The form as the job that the script writes. */
import { InputError } from "../../calc/errors";
import type { Cell } from "./cells";
import {
	type CutoutRow,
	FACES,
	filledPieces,
	type JobForm,
	type JobInput,
	type PieceRow,
	type ToneRow,
} from "./form";
import { numberOrText, percentOrText } from "./typed";

/**
 * The job of a form without mistakes: lengths as typed (a bare number as number), shares as numbers.
 *
 * @throws InputError when a number is none.
 */
export const jobInput = (form: JobForm): JobInput => ({
	units: form.units,
	client: form.client.trim(),
	title: form.title.trim(),
	...given("pourDate", form.pourDate),
	mix: form.mix,
	pieces: filledPieces(form).map(pieceInput),
	...(form.cutouts.length > 0 && { cutouts: form.cutouts.map(cutoutInput) }),
	tones: form.tones.map((tone) => toneInput(tone, form.pigments)),
});

function numberOf(name: string, cell: Cell): number {
	if (typeof cell === "number") return cell;
	throw new InputError(`${name} must be a number, got "${cell}"`);
}

/** The field where it is filled. */
function given<Name extends string>(
	name: Name,
	typed: string,
): Partial<Record<Name, string>> {
	const text = typed.trim();
	return (text ? { [name]: text } : {}) as Partial<Record<Name, string>>;
}

function length<Name extends string>(
	name: Name,
	typed: string,
): Partial<Record<Name, Cell>> {
	const cell = numberOrText(typed);
	return (cell === "" ? {} : { [name]: cell }) as Partial<Record<Name, Cell>>;
}

const pieceInput = (row: PieceRow): JobInput["pieces"][number] => ({
	name: row.name.trim(),
	quantity: numberOf("quantity", numberOrText(row.quantity)),
	shape: row.shape,
	a: numberOrText(row.a),
	...length("b", row.b),
	...length("c", row.c),
	...length("d", row.d),
	thickness: numberOrText(row.thickness),
	...length("dropHeight", row.dropHeight),
	...length("dropRun", row.dropRun),
	...length("dropThickness", row.dropThickness),
	...faceOf(row),
});

function faceOf({ face }: PieceRow): { face?: (typeof FACES)[number] } {
	const known = FACES.find((name) => name === face);
	return known ? { face: known } : {};
}

const cutoutInput = (
	row: CutoutRow,
): NonNullable<JobInput["cutouts"]>[number] => ({
	piece: row.piece,
	count: numberOf("count", numberOrText(row.count)),
	shape: row.shape,
	a: numberOrText(row.a),
	...length("b", row.b),
});

/** A blank dose is left out, so that a pigment which nobody doses is not in the job. */
function toneInput(
	row: ToneRow,
	pigments: readonly string[],
): JobInput["tones"][number] {
	const doses = pigments
		.filter((pigment) => (row.doses[pigment] ?? "").trim() !== "")
		.map((pigment) => [
			pigment,
			numberOf(pigment, percentOrText(row.doses[pigment] ?? "")),
		]);
	return {
		name: row.name.trim(),
		share: numberOf("share", percentOrText(row.share)),
		doses: Object.fromEntries(doses),
	};
}
