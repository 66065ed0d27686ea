/** What a person reads of a recipe. */
import type { Lab } from "../../calc/color";
import { percent } from "../../calc/errors";
import { LOOK } from "../fields/tone";
import type { Basis } from "./basis";
import { all, from, is, type Known, readField } from "./known";
import {
	type RecipeAnswer,
	recipesOf,
	type StudioPalette,
	studioPalette,
} from "./recipes";

/** Above this, half of people do not take a color for the wanted one (Paravina et al. 2015). */
const OUT_OF_REACH = 1.8;
/** A part of a difference that is worth a word, in L*, a* or b*: common practice, no source. */
const WORTH_A_WORD = 1;

/** Doses as their makers state them. */
export const recipeWords = ({ doses }: Pick<RecipeAnswer, "doses">): string =>
	doses.length === 0
		? "no pigment"
		: doses
				.map(({ name, typed }) => `${name} ${percent(typed, 3)}`)
				.join(" + ");

/** A cast's ±: one decimal says more than is known above 1. */
export const withinWords = (within: number): string =>
	`± ${within.toFixed(within < 1 ? 1 : 0)}`;

/** What may be said of it: never a match without its ±. */
export const promiseOf = (
	{ difference, within, lab }: RecipeAnswer,
	wanted: Lab,
): string =>
	difference > OUT_OF_REACH
		? `out of reach, ${difference.toFixed(1)} off: ${missWords(lab, wanted)}`
		: `predicted difference ${difference.toFixed(1)}, expect the cast within ${withinWords(within)}`;

/** How a color misses another, the two largest parts first: `lighter and less red than wanted`. */
export function missWords(lab: Lab, wanted: Lab): string {
	const parts = [
		{ off: lab.l - wanted.l, more: "lighter", less: "darker" },
		{
			off: lab.a - wanted.a,
			more: wanted.a < 0 ? "less green" : "redder",
			less: wanted.a > 0 ? "less red" : "greener",
		},
		{
			off: lab.b - wanted.b,
			more: wanted.b < 0 ? "less blue" : "yellower",
			less: wanted.b > 0 ? "less yellow" : "bluer",
		},
	]
		.filter(({ off }) => Math.abs(off) >= WORTH_A_WORD)
		.sort((one, other) => Math.abs(other.off) - Math.abs(one.off))
		.slice(0, 2)
		.map(({ off, more, less }) => (off > 0 ? more : less));
	return parts.length > 0
		? `${parts.join(" and ")} than wanted`
		: "hardly different from what is wanted";
}

/** The recipe for the color that the job's Tones tab asks for, in one sentence; blank where none is asked for. */
export function wantedWords(basis: Basis): Known<string> {
	const { given } = basis;
	const wanted = readField(LOOK, "wanted", given.job, given.units);
	if ("missing" in wanted) return is("");
	return from(
		all([wanted, studioPalette(basis)] as [
			typeof wanted,
			Known<StudioPalette>,
		]),
		([lab, studio]) => {
			const [first] = recipesOf(basis, studio, lab);
			return first
				? `${recipeWords(first)}: ${promiseOf(first, lab)} (${first.color})`
				: "";
		},
	);
}
