/** What the Pour log answers: pours and measured colors in which the words of its Find cell stand. */
import { foundRows, MOST_FOUND } from "../answers/wordsearch";
import { doseOf, SWATCH_COLUMNS } from "../cells/studioslots";
import type { Field } from "../fields/field";
import { LOGGED, type LoggedRow } from "../fields/log";
import { SWATCH } from "../fields/swatch";
import type { SwatchInput } from "../studiofile";
import { formatOf } from "./fieldformat";
import type { Shown, TabAnswer, TabInput, Value } from "./tab";

const looked = ({ regions }: TabInput): string =>
	String(regions.find?.[0]?.[0] ?? "").trim();

const shownOf = (field: Field): Shown => ({
	label: field.label,
	format: formatOf(field),
});

const loggedTexts = (row: LoggedRow) => [
	row.heading,
	row.mix,
	row.tones,
	row.lots,
	row.remarks,
	row.result,
];

const poursFound = (input: TabInput): LoggedRow[] =>
	foundRows(looked(input), input.given.studio.log ?? [], loggedTexts);

/** The last of the rows that are found; `none` where none is, and nothing while nothing is looked for. */
const latest = (input: TabInput, rows: readonly (readonly Value[])[]) =>
	rows.length > 0
		? rows.slice(-MOST_FOUND)
		: looked(input) === ""
			? []
			: [["none"]];

export const POURS_COUNT: TabAnswer = {
	name: "POURS_COUNT",
	summary: "How many pours have the words that are looked for.",
	needs: ["find", "pours"],
	shape: "list",
	shown: [{ label: "Found", format: "text" }],
	values: (input) => [[countText(input)]],
};

function countText(input: TabInput): string {
	const count = poursFound(input).length;
	if (looked(input) === "")
		return input.given.studio.log?.length
			? ""
			: "No pour yet: choose Record a pour in the Tonefold menu, or paste its row from the Pour card below.";
	if (count === 0) return "No pour has this.";
	return count > MOST_FOUND
		? `${count} found: the last ${MOST_FOUND} stand below`
		: `${count} found`;
}

export const POURS_FOUND: TabAnswer = {
	name: "POURS_FOUND",
	summary:
		"The last pours that have all words of the Find cell in their client and title, mix, tones, lots, remarks or result.",
	needs: ["find", "pours"],
	shape: "table",
	shown: Object.values(LOGGED).map(shownOf),
	values: (input) =>
		latest(
			input,
			poursFound(input).map((row) =>
				Object.keys(LOGGED).map((key) => row[key as keyof LoggedRow]),
			),
		),
};

const { before, pigments } = SWATCH_COLUMNS;

const SWATCH_FIELDS = Object.entries(SWATCH);

const swatchTexts = ({ mix, doses = {}, lot, remark }: SwatchInput) => [
	mix,
	...Object.keys(doses),
	lot,
	remark,
];

const dosedPigments = ({ given: { studio } }: TabInput): readonly string[] =>
	studio.swatchPigments ?? [];

export const COLORS_FOUND: TabAnswer = {
	name: "COLORS_FOUND",
	summary:
		"The last measured colors of swatches that have all words of the Find cell in their mix, pigments, lot or remark.",
	needs: ["find", "swatches"],
	shape: "table",
	shown: [
		...SWATCH_FIELDS.slice(0, before).map(([, field]) => shownOf(field)),
		...Array.from(
			{ length: pigments },
			(): Shown => ({
				label: "",
				format: "share",
			}),
		),
		...SWATCH_FIELDS.slice(before).map(([, field]) => shownOf(field)),
	],
	headings: (input) =>
		Object.fromEntries(
			dosedPigments(input).map((name, index) => [before + index, name]),
		),
	values: (input) => {
		const names = dosedPigments(input);
		const measured = (input.given.studio.swatches ?? []).filter(
			({ color }) => color !== undefined,
		);
		return latest(
			input,
			foundRows(looked(input), measured, swatchTexts).map(
				({ doses = {}, ...row }) => {
					const cells = SWATCH_FIELDS.map(
						([key]) => row[key as keyof typeof SWATCH],
					);
					return [
						...cells.slice(0, before),
						...Array.from({ length: pigments }, (_, index) =>
							doseOf(doses, names[index]),
						),
						...cells.slice(before),
					];
				},
			),
		);
	},
};
