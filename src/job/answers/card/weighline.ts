/** A line of the card's weigh-out: what the scale is to show, and what it said. */
import { onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { unitName } from "../../reading/units";
import { type Given, inUnit } from "../given";
import { is, isKnown, type Known, look, type Said, saidOf } from "../known";
import { weighedOf, weightIn } from "./loadpour";

/** In the person's unit of mass. */
export interface WeighOutLine {
	name: string;
	/** Of the mix design. */
	planned: number;
	/** After what was weighed too much: to weigh now. */
	mass: number;
	/** The same as the scale shows it. */
	shown: number;
	weighed: number | null;
	/** Whole packs and the rest, what is still to come, or what is wrong. */
	say: Said;
}

export interface Line {
	name: string;
	planned: number;
	/** Of the whole packs it is bought in. */
	pack: number | undefined;
	weighed: Known<number>;
}

export interface Planned {
	name: string;
	kg: number;
	pack: number | undefined;
}

export function lineOf(
	given: Given,
	pour: PourInput,
	{ name, kg, pack }: Planned,
	isAlone: boolean,
): Line {
	const planned = inUnit(given, "mass", kg);
	const weighed = weightIn(`the weight of ${name}`, weighedOf(pour, name));
	return {
		name,
		planned,
		pack: pack === undefined ? undefined : inUnit(given, "mass", pack),
		weighed: isKnown(weighed) ? fits(weighed, name, planned, isAlone) : weighed,
	};
}

function fits(
	weighed: { is: number },
	name: string,
	planned: number,
	isAlone: boolean,
): Known<number> {
	const got = plain(weighed.is);
	if (!isAlone)
		return look(
			`two ingredients of the mix are named ${name}: give each a name of its own on the Mixes tab`,
		);
	if (weighed.is < 0)
		return look(`the weight of ${name} must be 0 or more, got ${got}`);
	return planned > 0 || weighed.is === 0
		? weighed
		: look(
				`the weight of ${name} must be blank, for none of it is planned, got ${got}`,
			);
}

export function withAmounts(
	given: Given,
	{ name, planned, pack, weighed }: Line,
	factor: number,
	divisionKg: number,
): WeighOutLine {
	const mass = planned * factor;
	const division = inUnit(given, "mass", divisionKg);
	const shown = onScale(mass, division);
	return {
		name,
		planned,
		mass,
		shown,
		weighed: isKnown(weighed) ? weighed.is : null,
		say: saidOf(
			"look" in weighed
				? weighed
				: sentence(given, { shown, mass, pack, weighed, division }),
		),
	};
}

function sentence(
	{ units }: Given,
	{
		shown,
		mass,
		pack = 0,
		weighed,
		division,
	}: {
		shown: number;
		mass: number;
		pack: number | undefined;
		weighed: Known<number>;
		division: number;
	},
): Known<string> {
	const unit = unitName("mass", units);
	if (isKnown(weighed))
		return mass - weighed.is > division
			? look(`${Number((mass - weighed.is).toFixed(2))} ${unit} more`)
			: is("");
	if (!(pack > 0 && shown >= pack)) return is("");
	const packs = Math.floor(shown / pack + 1e-9);
	const rest = shown - packs * pack;
	return is(
		`${packs} of ${plain(pack)} ${unit}${rest > division / 2 ? ` + ${Number(rest.toFixed(3))} ${unit}` : ""}`,
	);
}
