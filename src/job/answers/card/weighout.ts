/** What to weigh of each ingredient of a load, and what was weighed. */
import { rescaleFactor } from "../../../calc/batch";
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import type { PourInput } from "../../jobfile";
import { isBlank } from "../../reading/cells";
import type { Basis } from "../basis";
import { setting } from "../given";
import { all, from, is, isKnown, type Known, look } from "../known";
import { ICE } from "./loadpour";
import type { MixWaterAnswer } from "./mixwater";
import {
	type Line,
	lineOf,
	type Planned,
	type WeighOutLine,
	withAmounts,
} from "./weighline";

export interface WeighOutAnswer {
	lines: Known<readonly WeighOutLine[]>;
	/** Of all lines. */
	total: Known<number>;
	/** The planned masses together: all binder of the load is in them. */
	planned: Known<number>;
	/** What was weighed, once nothing of it is wrong. */
	weights: Known<true>;
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

/** What was weighed too much raises all others; what cannot be does not count. */
const factorOf = (rows: readonly Line[]): number =>
	rescaleFactor(
		rows.map(({ planned, weighed }, i) => ({
			plannedKg: planned,
			weighedKg: isKnown(weighed) ? weighed.is : undefined,
			row: i + 1,
		})),
	);

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
