/** Finds functions by what they do. */
import type { FunctionHelp } from "../../functions/help";

/** Texts of a function and what a word found in each counts. */
const PLACES: readonly [weight: number, text: (fn: FunctionHelp) => string][] =
	[
		[8, (fn) => fn.name],
		[4, (fn) => fn.summary],
		[3, (fn) => fn.group],
		[2, (fn) => [fn.answer, ...fn.arguments.map(({ name }) => name)].join(" ")],
		[1, (fn) => [fn.limits, ...fn.arguments.map(textOf)].join(" ")],
	];

const textOf = (argument: FunctionHelp["arguments"][number]): string =>
	`${argument.help} ${argument.facts} ${argument.columns}`;

const plain = (text: string): string =>
	text.toLowerCase().replace(/[_\s]+/g, " ");

/** `weights` finds `weigh`, `dosing` finds `dose`. */
const stem = (word: string): string =>
	word.length > 4 ? word.replace(/(ing|ed|es|s|e)$/, "") : word;

/** Words of a question that say nothing of what is asked. */
const ASIDE: ReadonlySet<string> = new Set(
	"a an and are do does for from how i in is it many much my need of on or the to what will with".split(
		" ",
	),
);

/** How well a function answers the words; 0 when one of them is nowhere in it. */
function scoreOf(fn: FunctionHelp, words: readonly string[]): number {
	const scores = words.map((word) =>
		PLACES.reduce(
			(best, [weight, text]) =>
				plain(text(fn)).includes(stem(word)) ? Math.max(best, weight) : best,
			0,
		),
	);
	return scores.includes(0) ? 0 : scores.reduce((sum, score) => sum + score, 0);
}

/** The functions that have every word typed, best first; all of them when nothing is typed. */
export function found(
	all: readonly FunctionHelp[],
	typed: string,
): readonly FunctionHelp[] {
	const words = plain(typed)
		.replace(/[?,.]/g, " ")
		.split(" ")
		.filter((word) => word !== "" && !ASIDE.has(word));
	if (words.length === 0) return all;
	return all
		.map((fn) => ({ fn, score: scoreOf(fn, words) }))
		.filter(({ score }) => score > 0)
		.sort((one, other) => other.score - one.score)
		.map(({ fn }) => fn);
}
