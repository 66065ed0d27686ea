/** The colors that tones should have, from those of the studio's swatches that speak of the same thing. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import { percent } from "./errors";
import { sameName } from "./names";
import { withRounding } from "./rounding";
import { sum } from "./sum";
import { type SwatchRow, toneColors } from "./tonecolor";
import type { Tone } from "./tones";

/** What a color depends on besides pigment. */
const KINDS = ["mix", "finish", "sealing", "state"] as const;

export interface StudioSwatch {
	/** As typed, in the order of `KINDS`. */
	kinds: readonly string[];
	/** A pigment of the swatches each; undefined where nothing is typed. */
	doses: readonly (number | undefined)[];
	lab: Lab | undefined;
	/** Why it says nothing of finished pieces, e.g. `younger than 28 days`. */
	unfit?: string;
	/** How many readings of a meter it is worth, when that is not 1. */
	worth?: number;
}

export interface SwatchSet {
	swatches: readonly StudioSwatch[];
	swatchPigments: readonly string[];
	/** Of the job, in the order of `KINDS`. */
	kinds: readonly string[];
	/** Of the job, in the order of its tones' doses. */
	pigments: readonly string[];
}

export interface ExpectedColor {
	/** Undefined where the swatches do not tell, and `remark` says why. */
	lab?: Lab;
	remark: string;
	/** The tone that looks most like it, when at least two have a color. */
	nearest?: { name: string; difference: number };
}

const SEVERAL = "with several pigments";

/** Why a swatch says nothing about the job; undefined when it does. */
function leftOutFor(
	{ kinds, doses, lab, unfit }: StudioSwatch,
	set: SwatchSet,
): string | undefined {
	if (!lab) return "without a color";
	if (unfit) return unfit;
	const other = KINDS.findIndex(
		(_, i) => !sameName(kinds[i] ?? "", set.kinds[i] ?? ""),
	);
	if (other >= 0) return `of another ${KINDS[other]}`;
	if (doses.every((dose) => dose === undefined))
		return "without a dose (0 is undosed)";
	const dosed = set.swatchPigments.filter((_, i) => (doses[i] ?? 0) > 0);
	if (dosed.some((name) => !set.pigments.some((own) => sameName(own, name))))
		return "with other pigments";
	return dosed.length > 1 ? SEVERAL : undefined;
}

const columnsOf = ({ pigments, swatchPigments }: SwatchSet): number[] =>
	pigments.map((name) =>
		swatchPigments.findIndex((other) => sameName(other, name)),
	);

/** The swatches that count, of one pigment or none, their doses in the order of the job's pigments. */
export function counting(set: SwatchSet): SwatchRow[] {
	const columns = columnsOf(set);
	return set.swatches.flatMap((swatch) =>
		swatch.lab && leftOutFor(swatch, set) === undefined
			? [
					{
						doses: columns.map((column) => swatch.doses[column] ?? 0),
						lab: swatch.lab,
						worth: swatch.worth,
					},
				]
			: [],
	);
}

/** Doses of every swatch of the kind, those of several pigments too, in the order of the job's pigments. */
export function castDoses(set: SwatchSet): number[][] {
	const columns = columnsOf(set);
	return set.swatches
		.filter((swatch) => [undefined, SEVERAL].includes(leftOutFor(swatch, set)))
		.map(({ doses }) => columns.map((column) => doses[column] ?? 0));
}

/** How many swatches count, and for what reasons the others do not. */
export function swatchesUsed(set: SwatchSet): string {
	const reasons = new Map<string, number>();
	for (const swatch of set.swatches) {
		const reason = leftOutFor(swatch, set);
		if (reason) reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
	}
	const all = set.swatches.length;
	const used = all - sum([...reasons.values()]);
	const left = [...reasons].map(([reason, count]) => `${count} ${reason}`);
	return `${used} of ${all} swatches used${left.length ? `; left out: ${left.join(", ")}` : ""}`;
}

/** Why the swatches do not tell a tone's color; undefined when they do. */
function missingFor(
	{ doses }: Tone,
	rows: readonly SwatchRow[],
	{ pigments }: SwatchSet,
): string | undefined {
	const dosed = doses.flatMap((dose, i) => (dose > 0 ? [{ dose, i }] : []));
	for (const { dose, i } of dosed) {
		const name = pigments[i] ?? "";
		const alone = rows
			.filter((row) => row.doses.every((other, j) => j === i || other === 0))
			.map((row) => row.doses[i] ?? 0);
		const strongest = Math.max(...alone);
		if (new Set(alone).size < 2)
			return `two doses of ${name} alone are needed (undosed counts), there ${new Set(alone).size === 1 ? "is one" : "are none"}`;
		if (dose > withRounding(strongest))
			return `past the strongest swatch of ${name}, ${percent(strongest, 4)} of binder`;
		if (dosed.length === 1 && withRounding(dose) < Math.min(...alone))
			return "an undosed swatch is needed";
	}
	const undosed = rows.some((row) => row.doses.every((dose) => dose === 0));
	return dosed.length === 1 || undosed
		? undefined
		: "an undosed swatch is needed";
}

/**
 * The expected color of each tone, and the tone it is most like (CIEDE2000).
 *
 * From swatches of the same mix, finish, sealing and state with at most one pigment; a tone that they do not reach has no color.
 */
export function expectedColors(
	tones: readonly Tone[],
	set: SwatchSet,
): ExpectedColor[] {
	const rows = counting(set);
	const colorOf = toneColors(rows);
	const colors = tones.map((tone) => {
		const missing =
			rows.length === 0
				? "no swatch of this mix, finish, sealing and state"
				: missingFor(tone, rows, set);
		return missing
			? { name: tone.name, remark: missing }
			: { name: tone.name, lab: colorOf(tone.doses), remark: "" };
	});
	return colors.map((color) => ({ ...color, nearest: nearest(color, colors) }));
}

interface Named {
	name: string;
	lab?: Lab;
}

function nearest(
	one: Named,
	all: readonly Named[],
): ExpectedColor["nearest"] | undefined {
	const others = all.flatMap(({ name, lab }) =>
		one.lab && lab && name !== one.name
			? [{ name, difference: colorDifference(one.lab, lab) }]
			: [],
	);
	return others.reduce<ExpectedColor["nearest"]>(
		(least, other) =>
			least && least.difference <= other.difference ? least : other,
		undefined,
	);
}
