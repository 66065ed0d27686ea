/** What to weigh of each ingredient of a load, and what was weighed. */
import { rescaleFactor } from "../../../calc/batch";
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import { onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { isBlank, plain } from "../../reading/cells";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, inUnit, setting } from "../given";
import {
	all,
	from,
	is,
	isKnown,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import { ICE, weighedOf, weightIn } from "./loadpour";
import type { MixWaterAnswer } from "./mixwater";

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

export interface WeighOutAnswer {
	lines: Known<readonly WeighOutLine[]>;
	/** Of all lines. */
	total: Known<number>;
	/** The planned masses together: all binder of the load is in them. */
	planned: Known<number>;
	/** What was weighed, once nothing of it is wrong. */
	weights: Known<true>;
}

interface Line {
	name: string;
	planned: number;
	/** Of the whole packs it is bought in. */
	pack: number | undefined;
	weighed: Known<number>;
}

export function weighOut(
	basis: Basis,
	pour: PourInput,
	water: MixWaterAnswer,
): WeighOutAnswer {
	const { given, mix } = basis;
	const planned = from(
		all([mix.ingredients, water.plannedKg, water.iceKg] as [
			typeof mix.ingredients,
			typeof water.plannedKg,
			Known<number>,
		]),
		([rows, masses, ice]) =>
			[
				...rows.map(
					({ ingredient, pack }, i): Planned => ({
						name: ingredient,
						kg: masses[i] ?? 0,
						pack,
					}),
				),
				{ name: ICE, kg: ice, pack: undefined },
			].map((row, _, every) =>
				lineOf(given, pour, row, isOnlyOne(row.name, every)),
			),
	);
	const lines = from(
		all([planned, setting(given, "mix_division")] as [
			typeof planned,
			Known<number>,
		]),
		([rows, divisionKg]) => {
			const factor = factorOf(rows);
			return rows
				.map((row) => withAmounts(given, row, factor, divisionKg))
				.filter(
					({ name, planned: mass, weighed, say }) =>
						name !== ICE ||
						mass > 0 ||
						weighed !== null ||
						say.state === "look",
				);
		},
	);
	return {
		lines,
		total: from(lines, (rows) => sum(rows.map(({ mass }) => mass))),
		planned: from(planned, (rows) => sum(rows.map((row) => row.planned))),
		weights: isKnown(planned) ? weightsOf(planned.is, pour) : planned,
	};
}

interface Planned {
	name: string;
	kg: number;
	pack: number | undefined;
}

function lineOf(
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

/** What was weighed too much raises all others; what cannot be does not count. */
const factorOf = (rows: readonly Line[]): number =>
	rescaleFactor(
		rows.map(({ planned, weighed }, i) => ({
			plannedKg: planned,
			weighedKg: isKnown(weighed) ? weighed.is : undefined,
			row: i + 1,
		})),
	);

function withAmounts(
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

const isOnlyOne = (name: string, rows: readonly { name: string }[]): boolean =>
	rows.filter((row) => sameName(row.name, name)).length === 1;

/** Whether every weight is one that can be, of an ingredient that there is. */
function weightsOf(
	rows: readonly Line[],
	{ weighed = {} }: PourInput,
): Known<true> {
	const stray = Object.entries(weighed).find(
		([name, typed]) =>
			!isBlank(typed) && !rows.some((row) => sameName(row.name, name)),
	);
	if (stray)
		return look(
			`a weight is typed for ${stray[0]}, which the mix does not have`,
		);
	const wrong = rows.find((row) => "look" in row.weighed)?.weighed;
	return wrong && "look" in wrong ? wrong : is(true);
}
