/** The water and ice of a load, and how warm its mix comes out. */
import { sum } from "../../../calc/sum";
import {
	dampSolidKg,
	iceKg,
	mixTemperatureC,
	waterTemperatureC,
} from "../../../calc/water";
import type { PourInput } from "../../jobfile";
import { limited } from "../../reading/limits";
import type { Basis } from "../basis";
import { inUnit, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	type Said,
	saidOf,
} from "../known";
import { pourField } from "./loadpour";
import { type Bare, bareMasses, plannedOf, waterCheck } from "./mixmasses";

/** In SI. */
export interface MixWaterAnswer {
	/** Water left out of the mixer, for it comes with the pigment. */
	heldKg: Known<number>;
	iceKg: Known<number>;
	/** To weigh of each ingredient as planned: damp, and water less what comes otherwise. */
	plannedKg: Known<readonly number[]>;
	/** At which water brings the mix to the temperature wanted; undefined when ice does. */
	waterC: Known<number | undefined>;
	/** At which the mix comes out with the water as it is. */
	mixC: Known<number>;
	/** Whether the load has as much water as comes with pigment, damp material and ice. */
	waterCheck: Said;
	/** Whether the mix comes out as cool as wanted. */
	warmth: Said;
}

/** What counts for the temperature. */
interface Heat {
	solidKg: number;
	waterKg: number;
	targetC: number;
}

export function mixWater(
	basis: Basis,
	pour: PourInput,
	massKg: number,
): MixWaterAnswer {
	const { given, mix, tones } = basis;
	const heldKg = from(tones.pigmentWater, (share) => massKg * share);
	const bare = from(mix.ingredients, (rows) => bareMasses(rows, massKg));
	const heat = heatKnown(basis, bare, heldKg);
	const dryC = pourField(given, pour, "dryTemperature");
	const waterC = waterTemperature(basis, pour);
	const cooled = isCooled(pour);
	const ice: Known<number> = cooled
		? from(
				all([heat, dryC, waterC] as [typeof heat, typeof dryC, typeof waterC]),
				([{ solidKg, waterKg, targetC }, temperatureC, own]) =>
					iceKg({
						targetC,
						solids: [{ massKg: solidKg, temperatureC }],
						waterKg,
						waterC: own,
					}),
			)
		: is(0);
	const offKg = from(
		all([bare, heldKg, ice] as [typeof bare, Known<number>, Known<number>]),
		([{ freeWaterKg }, held, frozen]) => freeWaterKg + held + frozen,
	);
	const mixC = from(
		all([heat, dryC, waterC, ice] as [
			typeof heat,
			typeof dryC,
			typeof waterC,
			typeof ice,
		]),
		([{ solidKg, waterKg }, temperatureC, own, frozen]) =>
			mixTemperatureC({
				solids: [{ massKg: solidKg, temperatureC }],
				waterKg: waterKg - frozen,
				waterC: own,
				iceKg: frozen,
			}),
	);
	return {
		heldKg,
		iceKg: ice,
		plannedKg: plannedOf(bare, offKg),
		waterC: cooled ? is(undefined) : waterFor(heat, dryC),
		mixC,
		waterCheck: saidOf(waterCheck(bare, offKg)),
		warmth: saidOf(warmth(basis, mixC)),
	};
}

/** Without anything that counts as water, no temperature follows. */
function heatKnown(
	{ given }: Basis,
	bare: Known<Bare>,
	heldKg: Known<number>,
): Known<Heat> {
	const heat = from(
		all([bare, heldKg, setting(given, "warmest_mix")] as [
			Known<Bare>,
			Known<number>,
			Known<number>,
		]),
		([masses, held, targetC]): Heat => ({ ...heatOf(masses, held), targetC }),
	);
	return isKnown(heat) && !(heat.is.waterKg > 0)
		? missing("which ingredient is water, on the Mixes tab")
		: heat;
}

const isCooled = ({ ice }: PourInput): boolean =>
	String(ice ?? "")
		.trim()
		.toLowerCase() === "yes";

/** Of liquid water. */
const waterTemperature = ({ given }: Basis, pour: PourInput): Known<number> =>
	from(pourField(given, pour, "waterTemperature"), (celsius) =>
		limited(
			"water is at",
			celsius,
			pour.waterTemperature,
			{ min: 0, max: 100 },
			"temperature",
			given.units,
		),
	);

const heatOf = (
	{ rows, dryKg, toWeighKg, freeWaterKg }: Bare,
	heldKg: number,
): Omit<Heat, "targetC"> => {
	const masses = (isLiquid: boolean, of: (i: number) => number) =>
		sum(
			rows.map(({ group }, i) =>
				(group === "water") === isLiquid ? of(i) : 0,
			),
		);
	const dry = (i: number) => dryKg[i] ?? 0;
	return {
		solidKg: masses(false, (i) =>
			dampSolidKg(dry(i), (toWeighKg[i] ?? 0) - dry(i)),
		),
		waterKg: masses(true, dry) - freeWaterKg - heldKg,
	};
};

/** The temperature of the water, or what to do where water alone cannot bring it. */
function waterFor(heat: Known<Heat>, dryC: Known<number>): Known<number> {
	const water = fromBoth(heat, dryC, ({ solidKg, waterKg, targetC }, own) =>
		waterTemperatureC({
			targetC,
			solids: [{ massKg: solidKg, temperatureC: own }],
			waterKg,
		}),
	);
	if (!("look" in water && isKnown(heat) && isKnown(dryC))) return water;
	return look(
		dryC.is > heat.is.targetC
			? "colder than freezing: cool with ice"
			: "hotter than 60 °C (140 °F): warm the solids",
	);
}

/** Warmer than wanted by more than a degree of the person's scale. */
const warmth = ({ given }: Basis, mixC: Known<number>): Known<string> => {
	const tooWarm = fromBoth(
		mixC,
		setting(given, "warmest_mix"),
		(mix, wanted) =>
			inUnit(given, "temperature", mix) >
			inUnit(given, "temperature", wanted) + 1,
	);
	return isKnown(tooWarm) && tooWarm.is
		? look("warmer than wanted")
		: from(tooWarm, () => "");
};
