/** Finds functions by what they do. */
import type { Param, SheetFunction } from "../../functions/declare";

/** Texts of a function and what a word found in each counts. */
const PLACES: readonly [weight: number, text: (fn: SheetFunction) => string][] =
	[
		[8, (fn) => fn.name],
		[4, (fn) => fn.summary],
		[3, (fn) => fn.group],
		[2, (fn) => `${Object.keys(fn.params).join(" ")} ${fn.answer.text}`],
		[1, (fn) => [...Object.values(fn.params).map(helpOf), fn.limits].join(" ")],
	];

const helpOf = (param: Param): string => {
	const words = param.kind === "cell" ? (param.words ?? []) : [];
	const columns = param.kind === "table" ? Object.keys(param.columns) : [];
	return [param.help, ...words, ...columns].join(" ");
};

const plain = (text: string): string =>
	text.toLowerCase().replace(/[_\s]+/g, " ");

/** `weights` finds `weigh`, `mixing` finds `mix`. */
const stem = (word: string): string =>
	word.length > 4 ? word.replace(/(ing|ed|es|s)$/, "") : word;

/** How well a function fits the words; 0 when one of them is nowhere in it. */
function scoreOf(fn: SheetFunction, words: readonly string[]): number {
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
	registry: readonly SheetFunction[],
	typed: string,
): readonly SheetFunction[] {
	const words = plain(typed).trim().split(" ").filter(Boolean);
	if (words.length === 0) return registry;
	return registry
		.map((fn) => ({ fn, score: scoreOf(fn, words) }))
		.filter(({ score }) => score > 0)
		.sort((one, other) => other.score - one.score)
		.map(({ fn }) => fn);
}
