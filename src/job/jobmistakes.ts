/** What keeps a file from being a job of a studio: every mistake, at its field. */
import { InputError, quoted } from "../calc/errors";
import { moldPlan } from "../calc/mold";
import { nameKey, sameName } from "../calc/names";
import { dimensionMistakes, outlineOf } from "../calc/shapes";
import { dropEdge, type Piece, pieceSizes } from "../calc/takeoff";
import { batchShares } from "../calc/tones";
import { type Basis, basisOf } from "./answers/basis";
import { isKnown } from "./answers/known";
import { cutoutOf, isIn, lengthText } from "./answers/pieces";
import { type Fields, wordOf } from "./fields/field";
import { CUTOUT, type CutoutRow } from "./fields/openings";
import { PIECE } from "./fields/piece";
import { fieldMistakes, JOB_SHAPE, type JobFile, MOST } from "./jobfile";
import { isShaped, type Mistake, sentenceOf } from "./mistakes";
import { isBlank } from "./reading/cells";
import { mixNames, type StudioFile, studioPigments } from "./studiofile";

/** The job, when nothing of it is wrong. @throws InputError with a line for each mistake. */
export function checkedJob(studio: StudioFile, input: unknown): JobFile {
	const mistakes = jobMistakes(studio, input);
	if (mistakes.length > 0) throw new InputError(mistakes.join("\n"));
	return input as JobFile;
}

/** A sentence for each mistake of a file, which names its field. */
export function jobMistakes(studio: StudioFile, input: unknown): string[] {
	const typed = fieldMistakes(input);
	const sentences = typed.map(({ say }) => say);
	if (!isJobLike(input)) return sentences;
	const isFine = ({ path }: Mistake) =>
		!typed.some((one) => rowOf(one.path) === rowOf(path));
	return [
		...sentences,
		...otherUnits(studio, input),
		...refusals(basisOf(studio, input))
			.filter(isFine)
			.map(({ path, say }) => `"${path}": ${say}`),
	];
}

/** Sound enough to be worked out: its fields may hold anything. */
const isJobLike = (input: unknown): input is JobFile =>
	isShaped(input, JOB_SHAPE) &&
	["metric", "us"].includes((input as JobFile).units);

const otherUnits = (
	{ settings: { units } }: StudioFile,
	job: JobFile,
): string[] =>
	units === undefined || units === job.units
		? []
		: [`"units" is "${job.units}", but this workbook is in ${units}`];

/** `pieces[2]` of `pieces[2].a`; a field of the job itself is a row of its own. */
const rowOf = (path: string): string => path.replace(/\..*$/, "");

/** What the studio has not, and what the arithmetic refuses, of a job whose fields are fine. */
export const refusals = (basis: Basis): Mistake[] => [
	...mixMistakes(basis),
	...pieceMistakes(basis),
	...cutoutMistakes(basis),
	...knockoutMistakes(basis),
	...pigmentMistakes(basis),
	...toneMistakes(basis),
];

function mixMistakes({ given: { studio, job } }: Basis): Mistake[] {
	const mix = String(job.mix ?? "");
	const names = mixNames(studio);
	return isBlank(mix) || names.some((name) => sameName(name, mix))
		? []
		: [{ path: "mix", say: notOn("mix ", mix, "Mixes", names) }];
}

const notOn = (
	what: string,
	name: string,
	tab: string,
	names: readonly string[],
): string =>
	`${what}${quoted(name)} is not on the ${tab} tab: there are ${names.map(quoted).join(", ")}`;

/** A sentence at the field of a row that it begins with, or at the row. */
function placed(row: string, fields: Fields, sentence: string): Mistake {
	const say = sentence.replace(/^(?:cutouts )?row \d+: /, "");
	const begins = (word: string) =>
		say.startsWith(`${word} `) || say.startsWith(`${word}:`);
	const key = Object.keys(fields).find(
		(name) =>
			begins(wordOf(name)) || begins(lowered(fields[name]?.label ?? "")),
	);
	return { path: key ? `${row}.${key}` : row, say };
}

const lowered = (label: string): string =>
	label.replace(/^.(?=[a-z])/, (letter) => letter.toLowerCase());

const pieceMistakes = (basis: Basis): Mistake[] =>
	basis.pieces.flatMap(({ piece }, index) => {
		const sentences = isKnown(piece)
			? refusedOf(basis, piece.is, index)
			: "look" in piece
				? [piece.look]
				: [];
		return sentences.map((say) => placed(`pieces[${index}]`, PIECE, say));
	});

/** What is wrong with a piece whose fields are read. */
function refusedOf(
	{ given }: Pick<Basis, "given">,
	piece: Piece,
	index: number,
): string[] {
	const { notch, dropOn } = given.job.pieces[index] ?? {};
	const dimensions = dimensionMistakes(piece);
	return [
		...dimensions,
		...[
			dimensions.length === 0
				? sentenceOf(() => outlineOf(piece, lengthText(given)))
				: undefined,
			sentenceOf(() => dropEdge(piece)),
			sentenceOf(() =>
				moldPlan(piece, { cut: false, notchAt: String(notch ?? "") }),
			),
			sentenceOf(() =>
				moldPlan(piece, { cut: false, dropOn: String(dropOn ?? "") }),
			),
		].filter((sentence) => sentence !== undefined),
	];
}

function cutoutMistakes(basis: Basis): Mistake[] {
	const { job } = basis.given;
	const rows = job.cutouts ?? [];
	const each = rows.flatMap((row, index) => {
		const sentence = cutoutRefused(basis, row, index);
		return sentence ? [placed(`cutouts[${index}]`, CUTOUT, sentence)] : [];
	});
	return each.length > 0 ? each : tooManyCut(basis);
}

function cutoutRefused(
	basis: Basis,
	row: CutoutRow,
	index: number,
): string | undefined {
	const { given, pieces } = basis;
	const at = pieces.findIndex(({ name }) => isIn(row, name));
	const piece = pieces[at]?.piece;
	if (piece === undefined)
		return `piece ${quoted(String(row.piece ?? ""))} is not among the pieces`;
	const cutout = cutoutOf(row, index, given.units);
	if (!isKnown(piece) || !isKnown(cutout)) return undefined;
	if (refusedOf(basis, piece.is, at).length > 0) return undefined;
	return sentenceOf(() =>
		pieceSizes([piece.is], [cutout.is], lengthText(given)),
	);
}

/** Cutouts of one piece that each fit in it, and together do not. */
const tooManyCut = (basis: Basis): Mistake[] =>
	basis.pieces.flatMap(({ piece, cutouts, sizes }, index) =>
		isKnown(piece) &&
		isKnown(cutouts) &&
		"look" in sizes &&
		refusedOf(basis, piece.is, index).length === 0
			? [placed(`pieces[${index}]`, {}, sizes.look)]
			: [],
	);

/** A knockout without a size is refused: nothing could be said of it. */
const knockoutMistakes = ({ knockouts, mix }: Basis): Mistake[] =>
	knockouts.flatMap(({ volumeM3, upliftKg }, index) => {
		const path = `knockouts[${index}]`;
		if ("missing" in volumeM3)
			return [{ path, say: `type ${volumeM3.missing}` }];
		if ("look" in volumeM3) return [{ path, say: volumeM3.look }];
		return isKnown(mix.densityKgPerM3) && "look" in upliftKg
			? [{ path, say: upliftKg.look }]
			: [];
	});

function pigmentMistakes({ given, pigments }: Basis): Mistake[] {
	const { studio, job } = given;
	const names = studioPigments(studio);
	const unknown = (name: string, path: string): Mistake[] =>
		names.some((known) => sameName(known, name))
			? []
			: [{ path, say: notOn("", name, "Pigments", names) }];
	const dosed = job.tones.flatMap(({ doses = {} }, index) =>
		Object.entries(doses)
			.filter(([, dose]) => !isBlank(dose))
			.flatMap(([name]) => unknown(name, `tones[${index}].doses.${name}`)),
	);
	const columns = (job.pigments ?? []).flatMap((name, index) =>
		unknown(name, `pigments[${index}]`),
	);
	const most =
		pigments.length > MOST.pigments
			? [
					{
						path: "tones",
						say: `the tones use ${pigments.length} pigments (${pigments.map(({ name }) => name).join(", ")}): there is room for ${MOST.pigments}`,
					},
				]
			: [];
	return [...columns, ...dosed, ...most];
}

function toneMistakes({ given: { job } }: Basis): Mistake[] {
	const keys = job.tones.map(({ name }) => nameKey(String(name ?? "")));
	const twice = keys.flatMap((key, index) => {
		const first = keys.indexOf(key);
		return key === "" || first === index
			? []
			: [
					{
						path: `tones[${index}].name`,
						say: `name must be unique, ${quoted(String(job.tones[index]?.name))} is tone ${first + 1} too`,
					},
				];
	});
	// a share that nobody has typed yet is no mistake
	const shares = job.tones.map(({ share }) => share);
	const none = shares.every((share) => typeof share === "number")
		? sentenceOf(() =>
				batchShares(shares.map((share) => ({ name: "", share, doses: [] }))),
			)
		: undefined;
	return none ? [...twice, { path: "tones[0].share", say: none }] : twice;
}
