/** What is said of a tone that was finished: how far it is off, what brings it back, and what that does to each pigment. */
import { sum } from "../../../calc/sum";
import { onScale } from "../../../calc/weighing";
import { plain } from "../../reading/cells";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { inUnit } from "../given";
import { is, isKnown, type Known, look } from "../known";
import type { Scales } from "./stepline";
import type { Reached, ToneReached } from "./tonesreached";

/** Off by more than this share is said of a dose. */
const DOSE_OFF = 0.01;
/** And of a tone's share of the mix. Common practice, no source. */
const SHARE_OFF = 0.05;

/** What would bring a tone back; amounts in the unit of their scales. */
export interface Proposal {
	do: "fold in" | "add";
	pigment?: string;
	amount: number;
	/** The same as its scale shows it. */
	shown: number;
	unit: string;
	/** Grams of dry pigment in it; null where it is no pigment. */
	dry: number | null;
}

export interface ToneSaid {
	/** Blank where it is as wanted. */
	say: Known<string>;
	/** What to do first. */
	proposal?: Proposal;
}

export function toneSaid(
	basis: Basis,
	tone: ToneReached,
	{ reserveKg, binderShare }: { reserveKg: number; binderShare: number },
	scales: Scales,
): ToneSaid {
	const { given, pigments } = basis;
	const mass = (kg: number) => inUnit(given, "mass", kg);
	const massUnit = unitName("mass", given.units);
	const massText = (kg: number) =>
		`${onScale(mass(kg), scales.mix)} ${massUnit}`;
	const folding = (kg: number): Proposal => ({
		do: "fold in",
		amount: mass(kg),
		shown: onScale(mass(kg), scales.mix),
		unit: massUnit,
		dry: null,
	});
	const gramsShown = (grams: number) => onScale(grams, scales.grams);
	const nameOf = (i: number) => pigments[i]?.name ?? "";
	const dosed = tone.wanted.filter((dose) => dose > 0).length > 1;
	const binderG = binderShare * tone.undosedKg * 1000;
	const misses = tone.wanted.flatMap((wanted, i) => {
		const excess = wanted > 0 ? (tone.doses[i] ?? 0) / wanted - 1 : 0;
		// Half a division of the gram scale is no miss: it was weighed as asked.
		const least = Math.max(DOSE_OFF, scales.grams / 2 / (wanted * binderG));
		return Math.abs(excess) > least + 1e-9 ? [{ i, excess }] : [];
	});
	const stray = tone.wanted.findIndex(
		(wanted, i) => wanted === 0 && (tone.doses[i] ?? 0) > 1e-9,
	);
	if (tone.undosedKg <= 0) return { say: look("nothing of it is left") };
	if (stray >= 0)
		return {
			say: look(
				`${nameOf(stray)} is in it and should not be: it cannot be taken out`,
			),
		};
	if (misses.length === 0) return { say: is("") };
	const off = misses
		.map(
			({ i, excess }) =>
				`${dosed ? `${nameOf(i)} ` : ""}${percent(excess)} too ${excess > 0 ? "strong" : "weak"}`,
		)
		.join(", ");
	const excess = Math.max(...misses.map((miss) => miss.excess));
	/** Grams that each pigment lacks once the tone is so large. */
	const lacks = (undosedKg: number) =>
		tone.wanted.flatMap((wanted, i) => {
			const kg =
				binderShare *
				(wanted * undosedKg - (tone.doses[i] ?? 0) * tone.undosedKg);
			return kg > wanted * binderShare * undosedKg * DOSE_OFF
				? [{ i, grams: kg * 1000 }]
				: [];
		});
	const add = (lack: readonly { i: number; grams: number }[]) =>
		lack
			.map(
				({ i, grams }) =>
					`${gramsText(gramsShown(grams), dryGrams(basis, i, grams))} of ${nameOf(i)}`,
			)
			.join(" and ");
	if (excess <= 0) {
		const lack = lacks(tone.undosedKg);
		const [first] = lack;
		return {
			say: look(`${off}: add ${add(lack)}`),
			...(first && {
				proposal: {
					do: "add",
					pigment: nameOf(first.i),
					amount: first.grams,
					shown: gramsShown(first.grams),
					unit: unitName("pigment", given.units),
					dry: dryGrams(basis, first.i, first.grams),
				},
			}),
		};
	}
	const neededKg = tone.undosedKg * excess;
	if (mass(neededKg) > mass(reserveKg) + scales.mix / 2)
		return {
			say: look(
				`${off}: it needs ${massText(neededKg)} of undosed mix; ${reserveWords(tone, { excess, reserveKg, binderShare }, massText)}`,
			),
			...(reserveKg > 0 && { proposal: folding(reserveKg) }),
		};
	const weaker = lacks(tone.undosedKg + neededKg);
	const foldKg = Math.min(neededKg, reserveKg);
	return {
		say: look(
			`${off}: fold in ${massText(foldKg)} of the reserve to bring it back${
				weaker.length > 0
					? `; that leaves ${weaker.map(({ i }) => `${nameOf(i)} ${percent((tone.doses[i] ?? 0) / (1 + excess) / (tone.wanted[i] ?? 1) - 1)} too weak`).join(", ")}: then add ${add(weaker)}`
					: ""
			}`,
		),
		proposal: folding(foldKg),
	};
}

/** What can be done where the reserve is too small. */
function reserveWords(
	{ undosedKg, doses }: ToneReached,
	{
		excess,
		reserveKg,
		binderShare,
	}: { excess: number; reserveKg: number; binderShare: number },
	massText: (kg: number) => string,
): string {
	if (!(reserveKg > 0))
		return "no reserve is left: mix that much more without pigment, or keep it as it is";
	const still = (undosedKg * (1 + excess)) / (undosedKg + reserveKg) - 1;
	const savedKg = (reserveKg / excess) * (1 + binderShare * sum(doses));
	return `the reserve has ${massText(reserveKg)}, with which it is still ${percent(still)} too strong. Scoop out all but ${massText(savedKg)} first and that is enough, or mix more without pigment`;
}

/** Grams of dry pigment in what goes on the scale. */
export function dryGrams(
	{ pigments }: Basis,
	pigment: number,
	grams: number,
): number {
	const wet = pigments[pigment]?.wetPerDry;
	return wet && isKnown(wet) ? grams / wet.is : grams;
}

/** As weighed, and dry where that is something else. */
const gramsText = (grams: number, dry: number): string =>
	Math.abs(dry - grams) < 0.05
		? `${grams} g`
		: `${grams} g as weighed (${Number(dry.toFixed(1))} g dry)`;

/**
 * The tones that have clearly more or less of the mix than their share; blank where all have about theirs. What was folded
 * in as the card asked for it does not count.
 */
export function sharesSaid({ tones }: Reached): Known<string> {
	const all = sum(tones.map(({ undosedKg, foldedKg }) => undosedKg - foldedKg));
	const off = tones.flatMap(({ name, undosedKg, foldedKg, shareWanted }) => {
		const excess =
			all > 0 && shareWanted > 0
				? (undosedKg - foldedKg) / all / shareWanted - 1
				: 0;
		return Math.abs(excess) > SHARE_OFF
			? [
					{
						excess,
						words: `${name} ${percent(excess)} ${excess > 0 ? "over" : "short of"} its share`,
					},
				]
			: [];
	});
	return off.length > 0
		? look(
				off
					.sort((a, b) => b.excess - a.excess)
					.map(({ words }) => words)
					.join(", "),
			)
		: is("");
}

/** To the tenth below ten percent, and whole above. */
const percent = (share: number): string => {
	const value = Math.abs(share) * 100;
	return `${Number(value.toFixed(value < 10 ? 1 : 0))}%`;
};

/** `Umber 4% Black 0.5%`. */
export function doseWords(doses: Readonly<Record<string, number>>): string {
	const each = Object.entries(doses).flatMap(([pigment, dose]) =>
		dose > 0 ? [`${pigment} ${plain(Number((dose * 100).toFixed(2)))}%`] : [],
	);
	return each.length > 0 ? each.join(" ") : "undosed";
}
