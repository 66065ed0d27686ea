/** What the tones of a load came to: as they were pulled off or kept, then after each correction. */
import { InputError } from "../../../calc/errors";
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import { CORRECTION } from "../../fields/pour";
import type { CorrectionInput } from "../../jobfile";
import { isBlank, numberIn } from "../../reading/cells";
import { toSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, inUnit } from "../given";
import { is, isKnown, orNull, readRow } from "../known";
import type { PlanLine } from "../plan";

/** In kg; doses of binder, as they go on the scale. */
export interface ToneReached {
	name: string;
	/** Place in the table of tones. */
	tone: number;
	/** Number of the step that finished it. */
	step: number;
	undosedKg: number;
	/** Of it what was folded in from the reserve. */
	foldedKg: number;
	doses: readonly number[];
	wanted: readonly number[];
	/** Of all the mix that was toned. */
	share: number;
	shareWanted: number;
}

/** One thing that was done. */
export interface CorrectionStep {
	/** Its place among the corrections, from 1. */
	number: number;
	do: "fold in" | "add" | "scoop out";
	tone: string;
	/** The pigment that was added. */
	pigment?: string;
	/** In the unit of its scale. */
	amount: number;
	unit: string;
	/** Grams of dry pigment in it; null where it is no pigment. */
	dry: number | null;
}

export interface Reached {
	tones: readonly ToneReached[];
	/** What is left of the reserve. */
	reserveKg: number;
	done: readonly CorrectionStep[];
}

interface Load {
	lines: readonly PlanLine[];
	reserveKg: number;
	/** Binder in the undosed mix. */
	binderShare: number;
	corrections: readonly CorrectionInput[];
}

/** @throws InputError for a correction that cannot be. */
export function tonesReached(basis: Basis, load: Load): Reached {
	const { given } = basis;
	const wanted = load.lines.flatMap(({ plan, row }) =>
		"tone" in row.step ? [{ ...row, tone: row.step.tone, plan }] : [],
	);
	const now = {
		reserveKg: load.reserveKg,
		tones: wanted.map(({ plan, tone, toneKg, doses }) => ({
			name: plan.what,
			tone,
			step: plan.step,
			undosedKg: toneKg,
			foldedKg: 0,
			doses: [...doses],
		})),
		done: [] as CorrectionStep[],
	};
	load.corrections.forEach((correction, i) => {
		if (Object.keys(correction).length > 0)
			correct(basis, load, now, readCorrection(given, correction, i + 1));
	});
	const all = sum(now.tones.map(({ undosedKg }) => undosedKg));
	const tones = "is" in basis.tones.asWeighed ? basis.tones.asWeighed.is : [];
	const shares = sum(tones.map(({ share }) => share));
	return {
		...now,
		tones: now.tones.map((tone) => ({
			...tone,
			wanted: tones[tone.tone]?.doses ?? [],
			share: all > 0 ? tone.undosedKg / all : 0,
			shareWanted: (tones[tone.tone]?.share ?? 0) / shares,
		})),
	};
}

interface Now {
	reserveKg: number;
	tones: {
		name: string;
		undosedKg: number;
		foldedKg: number;
		doses: number[];
	}[];
	done: CorrectionStep[];
}

/** A correction as it was typed; amounts in the person's units. */
interface Typed {
	number: number;
	name: string;
	tone: string;
	foldedIn: number;
	takenOut: number;
	added: readonly (readonly [pigment: string, grams: number])[];
}

function readCorrection(
	given: Given,
	{ added = {}, ...row }: CorrectionInput,
	number: number,
): Typed {
	const name = `correction ${number}`;
	const read = readRow(CORRECTION, row, given.units);
	if (!isKnown(read))
		throw new InputError(`${name}: ${"look" in read ? read.look : ""}`);
	const { tone = "", foldedIn = 0, takenOut = 0 } = read.is;
	if (tone === "") throw new InputError(`${name}: say which tone it is of`);
	return {
		number,
		name,
		tone,
		foldedIn,
		takenOut,
		added: Object.entries(added).flatMap(([pigment, grams]) =>
			isBlank(grams)
				? []
				: [
						[
							pigment,
							atLeast0(`${name}: ${pigment || "what was added"}`, grams),
						],
					],
		),
	};
}

function atLeast0(name: string, typed: unknown): number {
	const value = numberIn(name, typed);
	if (value >= 0) return value;
	throw new InputError(`${name} must be 0 or more, got ${value}`);
}

function correct(
	{ given, pigments }: Basis,
	{ binderShare }: Load,
	now: Now,
	typed: Typed,
): void {
	const { number, name } = typed;
	const tone = now.tones.find((one) => sameName(one.name, typed.tone));
	if (!tone)
		throw new InputError(
			`${name}: there is no tone ${typed.tone} in this load`,
		);
	const mass = unitName("mass", given.units);
	const kg = (amount: number) => toSi(amount, "mass", given.units);
	const shown = (massKg: number) =>
		`${Number(inUnit(given, "mass", massKg).toFixed(2))} ${mass}`;
	const done = (step: Omit<CorrectionStep, "number" | "tone">) =>
		now.done.push({ number, tone: tone.name, ...step });
	if (typed.foldedIn > 0) {
		const foldedKg = kg(typed.foldedIn);
		if (foldedKg > now.reserveKg * (1 + 1e-9))
			throw new InputError(
				`${name}: ${shown(foldedKg)} folded in is more than the ${shown(now.reserveKg)} that is left of the reserve`,
			);
		const after = tone.undosedKg + foldedKg;
		tone.doses = tone.doses.map((dose) => (dose * tone.undosedKg) / after);
		tone.undosedKg = after;
		tone.foldedKg += foldedKg;
		now.reserveKg -= foldedKg;
		done({ do: "fold in", amount: typed.foldedIn, unit: mass, dry: null });
	}
	for (const [pigment, grams] of typed.added) {
		const at = pigmentAt(pigments, pigment, tone);
		if (at < 0)
			throw new InputError(
				pigment === ""
					? `${name}: say which pigment was added, like ${pigments[0]?.name ?? "Umber"} 20`
					: `${name}: this job has no pigment ${pigment}`,
			);
		const binderKg = binderShare * tone.undosedKg;
		if (!(binderKg > 0))
			throw new InputError(`${name}: nothing of ${tone.name} is left`);
		tone.doses[at] = (tone.doses[at] ?? 0) + grams / 1000 / binderKg;
		done({
			do: "add",
			pigment: pigments[at]?.name ?? pigment,
			amount: grams,
			unit: unitName("pigment", given.units),
			dry: grams / (orNull(pigments[at]?.wetPerDry ?? is(1)) ?? 1),
		});
	}
	if (typed.takenOut > 0) {
		const perUndosed = 1 + binderShare * sum(tone.doses);
		const thereKg = tone.undosedKg * perUndosed;
		const outKg = kg(typed.takenOut);
		if (outKg > thereKg * (1 + 1e-9))
			throw new InputError(
				`${name}: ${shown(outKg)} scooped out is more than the ${shown(thereKg)} that there is of ${tone.name}`,
			);
		const left = Math.max(0, 1 - outKg / thereKg);
		tone.undosedKg *= left;
		tone.foldedKg *= left;
		done({ do: "scoop out", amount: typed.takenOut, unit: mass, dry: null });
	}
}

/** A pigment without a name is the only one of its tone. */
const pigmentAt = (
	pigments: readonly { name: string }[],
	name: string,
	{ doses }: { doses: readonly number[] },
): number => {
	if (name !== "") return pigments.findIndex((one) => sameName(one.name, name));
	const own = doses.flatMap((dose, i) => (dose > 0 ? [i] : []));
	return own.length === 1 ? (own[0] ?? -1) : -1;
};
