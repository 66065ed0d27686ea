/**
 * Whatever can spoil a check by its value must be known for the check to be fine: each number that was typed is taken away,
 * and each check that some other number in its place makes a look of must not be fine without it.
 */
import { describe, expect, test } from "vitest";
import { checksOf } from "../../../src/job/answers/checks";
import type { State } from "../../../src/job/answers/known";
import { wholeOf } from "../../../src/job/answers/whole";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import { soundJob, soundStudio } from "./soundjob";

interface Files {
	studio: StudioFile;
	job: JobFile;
}

type Path = readonly (string | number)[];

const SOUND: Files = { studio: soundStudio(), job: soundJob() };

/** A blank has a meaning of its own there, so that without it the job is another one, and known. */
const MEANT: readonly (readonly [path: RegExp, why: string])[] = [
	[/^job\.waste$/, "the studio's usual waste"],
	[/^job\.pieces\.\d\.drop/, "no drop edge, or as thick as the piece"],
	[/^job\.tones\.\d\.doses\./, "none of that pigment"],
	[/^job\.cutouts\.\d\.(left|front)$/, "carried as in its worst place"],
	[
		/^job\.knockouts\.\d\.(mass|count|held)$/,
		"no mass of its own, one, held by nothing",
	],
	[/^studio\.mixes\.\d+\.(binder|cement|water)Share$/, "none in it"],
	[/^studio\.mixes\.\d+\.pack/, "no price, which the cost says"],
	[/^studio\.pigments\.\d\.maximum$/, "ASTM C979's 10%"],
];

function numbersIn(value: unknown, path: Path = []): Path[] {
	if (typeof value === "number") return [path];
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]) =>
		numbersIn(inner, [...path, Array.isArray(value) ? Number(key) : key]),
	);
}

const at = (value: unknown, [key, ...rest]: Path): unknown =>
	key === undefined ? value : at((value as Record<string, unknown>)[key], rest);

/** The same with another value at a place; without one, nothing stands there. */
function replaced<T>(value: T, [key, ...rest]: Path, by?: number): T {
	if (key === undefined) return by as T;
	const inner = (value as Record<string, unknown>)[key];
	const changed = replaced(inner, rest, by);
	return (
		Array.isArray(value)
			? value.map((one, i) => (i === key ? changed : one))
			: { ...value, [key]: changed }
	) as T;
}

const inState = (
	state: State,
	{ studio, job }: Files,
	except = /^$/,
): string[] =>
	checksOf(wholeOf(studio, job))
		.filter((check) => check.state === state && !except.test(check.say))
		.map(({ what }) => what);

/** Said of a number that cannot stand there at all, which tells nothing of what a check needs. */
const REFUSED = / must | does not fit | leave nothing /;

/** Other numbers that may be typed in its place. */
const othersOf = (value: number): number[] =>
	[value / 40, value * 40, 0].filter((other) => other !== value);

const paths = [
	...numbersIn(SOUND.studio.settings, ["studio", "settings"]),
	...numbersIn(SOUND.studio.mixes.slice(0, 16), ["studio", "mixes"]),
	...numbersIn(SOUND.studio.pigments, ["studio", "pigments"]),
	...numbersIn(SOUND.job, ["job"]),
].filter((path) => !MEANT.some(([meant]) => meant.test(path.join("."))));

describe("a check is not fine without a number that could spoil it", () => {
	test.each(paths.map((path) => [path.join("."), path] as const))(
		"%s",
		(_, path) => {
			const fine = inState("fine", replaced(SOUND, path));
			const spoiled = othersOf(at(SOUND, path) as number).flatMap((other) =>
				inState("look", replaced(SOUND, path, other), REFUSED),
			);
			expect(fine.filter((what) => spoiled.includes(what))).toEqual([]);
		},
	);

	test("all of them are fine with all numbers", () => {
		expect(paths.length).toBeGreaterThan(100);
		for (const state of ["look", "unknown"] as const)
			expect(inState(state, SOUND)).toEqual([]);
	});
});
