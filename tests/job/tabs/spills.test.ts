/** Each answer has the cells that it fills to itself, and the tab says how each of them looks. */
import { describe, expect, test } from "vitest";
import { tabAnswers } from "../../../src/job/tabs";
import { jobTabs, studioTabs } from "../../../templates/index";
import type { Tab } from "../../../templates/plan";
import { starterStudio } from "../../../templates/starterstudio";
import { answerOf, demoJob, jobRegions, pageFor } from "./typedcells";

const CALL = new RegExp(
	`\\b(${tabAnswers.map(({ name }) => name).join("|")})(?=\\()`,
);

const job = demoJob("metric");
const studio = starterStudio("metric");
const regions = jobRegions(job);

interface Spill {
	name: string;
	row: number;
	column: number;
}

const spillsOf = (tab: Tab): Spill[] =>
	pageFor(tab, job, studio).cells.flatMap((cells, row) =>
		cells.flatMap(({ value }, column) => {
			const [name] = CALL.exec(String(value)) ?? [];
			return name ? [{ name, row, column }] : [];
		}),
	);

const PLACES = [...jobTabs, ...studioTabs].flatMap((tab) =>
	spillsOf(tab).map((spill) => ({ tab, ...spill })),
);

test("every answer stands on one tab", () => {
	expect(PLACES.map(({ name }) => name).sort()).toEqual(
		tabAnswers.map(({ name }) => name).sort(),
	);
});

describe.each(PLACES)("$name", ({ tab, name, row, column }) => {
	const answer = tabAnswers.find((one) => one.name === name);
	if (!answer) throw new Error(`There is no answer ${name}`);
	const filled = answerOf(answer, regions);
	const { cells } = pageFor(tab, job, studio);
	const under = filled.map((_, down) =>
		(cells[row + down] ?? []).slice(column, column + (filled[0]?.length ?? 0)),
	);

	test("nothing else stands where it spills", () => {
		const others = under.flatMap((line, down) =>
			line.filter(({ value }, right) => down + right > 0 && value !== ""),
		);
		expect(others).toEqual([]);
		expect(under.every((line) => line.length === filled[0]?.length)).toBe(true);
	});

	test("every cell of it has a look of answers", () => {
		const looks = new Set(under.flat().map(({ look }) => look));
		expect(
			[...looks].every((look) => look !== "input" && look !== "label"),
		).toBe(true);
	});
});
