/** The fresh density of a load by a weighed bucket, and what the load yields. */
import type { PourInput } from "../../jobfile";
import { toSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { inUnit, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import { pourField } from "./loadpour";

export interface FreshAnswer {
	/** In kg/m³. */
	density: Known<number>;
	/** The volume of the load, and how far the density is from what the masses were worked out with. */
	say: Said;
}

/** Off by more than this share the molds run short, or mix is left over. Common practice, no source. */
const DENSITY_OFF = 0.02;

/** Mass of a bucket over its volume, and mass of the load over that. @source ASTM C138. */
export function freshAnswer(
	{ given, mix }: Basis,
	pour: PourInput,
	total: Known<number>,
): FreshAnswer {
	const density = fromBoth(
		pourField(given, pour, "bucketMass"),
		setting(given, "bucket_volume"),
		(massKg, volumeM3) => massKg / volumeM3,
	);
	const yielded = from(
		all([density, mix.densityKgPerM3, total] as [
			Known<number>,
			Known<number>,
			Known<number>,
		]),
		([measured, counted, mass]) => {
			const volume = inUnit(
				given,
				"volume",
				toSi(mass, "mass", given.units) / measured,
			);
			const off = measured / counted - 1;
			const words = `this load yields ${Number(volume.toFixed(2))} ${unitName("volume", given.units)}; ${Number((Math.abs(off) * 100).toFixed(1))}% ${off < 0 ? "lighter" : "heavier"} than the masses were worked out with`;
			return Math.abs(off) > DENSITY_OFF
				? look(`${words}: type it as measured on the Mixes tab`)
				: is(words);
		},
	);
	return { density, say: saidOf("is" in yielded ? yielded.is : yielded) };
}
