/** The mix of the job as the studio has it, and what follows from its proportions. */
import type { Cement } from "../../calc/cure";
import {
	binderShareOf,
	freshDensityKgPerM3,
	waterBinderRatio,
} from "../../calc/mix";
import { sameName } from "../../calc/names";
import { sum } from "../../calc/sum";
import type { Read } from "../fields/field";
import { INGREDIENT } from "../fields/mix";
import { isBlank } from "../reading/cells";
import { type Given, setting } from "./given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readRow,
} from "./known";

export interface Ingredient extends Read<typeof INGREDIENT> {
	ingredient: string;
	parts: number;
}

export interface MixAnswers {
	/** Its ingredients in the order of the Mixes tab. */
	ingredients: Known<readonly Ingredient[]>;
	/** Binder in the fresh mix. */
	binderShare: Known<number>;
	/** As measured, or else by the specific gravities. */
	densityKgPerM3: Known<number>;
	/** How far the measured density is from the one by the specific gravities, share; undefined where none was measured. */
	densityOff: Known<number | undefined>;
	waterBinder: Known<number>;
	/** Cement in the binder. */
	cementShare: Known<number>;
	/** Solids but fibers, over binder. */
	dryMixShare: Known<number>;
}

export function mixAnswers(given: Given): MixAnswers {
	const ingredients = ingredientsOf(given);
	const parts = from(ingredients, (rows) =>
		rows.map(({ parts, binderShare = 0, waterShare = 0, ...row }) => ({
			...row,
			part: parts,
			binderShare,
			waterShare,
		})),
	);
	const binder = (rows: readonly Part[]) =>
		sum(rows.map(({ part, binderShare }) => part * binderShare));
	const counted = densityOf(given, ingredients);
	const measured = measuredOf(ingredients);
	const isMeasured = !isKnown(measured) || measured.is !== undefined;
	return {
		ingredients,
		binderShare: from(parts, binderShareOf),
		densityKgPerM3: isMeasured ? (measured as Known<number>) : counted,
		densityOff: isMeasured
			? fromBoth(measured as Known<number>, counted, (own, by) => own / by - 1)
			: is(undefined),
		waterBinder: from(parts, waterBinderRatio),
		cementShare: cementShareOf(parts, binder),
		dryMixShare: from(
			parts,
			(rows) =>
				sum(
					rows
						.filter(({ group }) => group !== "water")
						.filter(({ ingredient = "" }) => !/fib/i.test(ingredient))
						.map(({ part }) => part),
				) / binder(rows),
		),
	};
}

/** Limits of pigment are of cement: without any there is nothing to hold a dose against. */
function cementShareOf(
	parts: Known<readonly (Part & { cementShare?: number })[]>,
	binder: (rows: readonly Part[]) => number,
): Known<number> {
	const share = from(
		parts,
		(rows) =>
			sum(rows.map(({ part, cementShare = 0 }) => part * cementShare)) /
			binder(rows),
	);
	return "is" in share && !(share.is > 0)
		? missing("the cement share of the mix on the Mixes tab")
		: share;
}

interface Part {
	part: number;
	binderShare: number;
}

function ingredientsOf({
	studio,
	job,
	units,
}: Given): Known<readonly Ingredient[]> {
	const name = String(job.mix ?? "").trim();
	if (name === "") return missing("choose the mix");
	const rows = studio.mixes.filter(({ mix }) =>
		sameName(String(mix ?? ""), name),
	);
	if (rows.length === 0)
		return look(`there is no mix ${name} on the Mixes tab`);
	const ofTab = rows.map((row) => {
		if (isBlank(row.parts))
			return missing(`the parts of ${row.ingredient} on the Mixes tab`);
		const read = readRow(INGREDIENT, row, units);
		return "look" in read
			? look(`${row.ingredient} on the Mixes tab: ${read.look}`)
			: read;
	});
	return from(all(ofTab), (read) =>
		read.map((row) => ({
			...row,
			ingredient: row.ingredient ?? "",
			parts: row.parts ?? 0,
		})),
	);
}

/** On whichever row of the mix it stands; undefined where on none. */
const measuredOf = (
	ingredients: Known<readonly Ingredient[]>,
): Known<number | undefined> => {
	const typed = from(ingredients, (rows) => [
		...new Set(rows.flatMap(({ measuredDensity }) => measuredDensity ?? [])),
	]);
	return isKnown(typed) && typed.is.length > 1
		? look("two rows of the mix state other measured densities: keep one")
		: from(typed, ([density]) => density);
};

function densityOf(
	given: Given,
	ingredients: Known<readonly Ingredient[]>,
): Known<number> {
	const gravities = from(ingredients, (rows) =>
		rows.filter(({ parts }) => parts > 0),
	);
	const without = from(gravities, (rows) =>
		rows.find(({ specificGravity }) => specificGravity === undefined),
	);
	if ("is" in without && without.is)
		return missing(
			`the specific gravity of ${without.is.ingredient} on the Mixes tab`,
		);
	return fromBoth(gravities, setting(given, "air"), (rows, air) =>
		freshDensityKgPerM3(
			rows.map(({ parts, specificGravity = 1 }) => ({
				part: parts,
				specificGravity,
			})),
			air,
		),
	);
}

/** What each ingredient takes of a mass of mix, in the unit of the mass. */
export const ingredientMasses = (
	{ ingredients }: MixAnswers,
	mass: Known<number>,
): Known<readonly number[]> =>
	fromBoth(ingredients, mass, (rows, whole) => {
		const parts = sum(rows.map((row) => row.parts));
		return rows.map((row) => (row.parts / parts) * whole);
	});

/** How fast the mix hardens: the class of its cement on the Mixes tab, or the studio's usual one. */
export function cementOf(given: Given): Known<Cement> {
	const classes = from(ingredientsOf(given), (rows) => [
		...new Set(rows.flatMap(({ cement }) => (cement ? [cement] : []))),
	]);
	if (!isKnown(classes)) return classes;
	const [one, other] = classes.is;
	if (other !== undefined)
		return look(`the mix has two classes of cement, ${one} and ${other}`);
	return one === undefined ? setting(given, "cement") : is(one);
}
