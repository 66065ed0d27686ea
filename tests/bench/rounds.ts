/** How many rounds of custom calls a change takes: calls whose arguments wait for other calls are answered after them. */
import type { Desk } from "../../src/desk/contract";
import { registry } from "../../src/functions/index";
import { tabAnswers } from "../../src/job/tabs/index";

/** Every function that is a custom call in a cell: the public ones and those of the tabs. */
export const customNames: readonly string[] = [
	...registry.map(({ name }) => name),
	...tabAnswers.map(({ name }) => name),
];

/** Seconds a real sheet takes for one round of custom calls, and how many it answers at once. */
const ROUND_S = 0.8;
const AT_ONCE = 30;

interface Area {
	tab: string;
	row: number;
	column: number;
	rows: number;
	columns: number;
}

interface Node {
	/** The formula's own cell and those that it fills. */
	area: Area;
	formula: string;
	/** How many custom calls it makes. */
	calls: number;
	reads: Area[];
}

export interface Rounds {
	formulas: number;
	longest: number;
	/** Longer than 200 letters. */
	long: number;
	calls: number;
	/** The longest chain of custom calls that feed each other. */
	depth: number;
}

const CELL = String.raw`\$?([A-Z]{1,3})\$?(\d+)`;
const REFERENCE = new RegExp(
	String.raw`(?:(?:'((?:[^']|'')+)'|([A-Za-z_][\w.]*))!)?${CELL}(?::${CELL})?(?![\w(])|\b((?:job\d+|studio)_\w+)`,
	"g",
);

const columnOf = (letters: string): number =>
	[...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;

function areaFrom(
	tab: string,
	[left, top, right = left, bottom = top]: readonly (string | undefined)[],
): Area {
	const [column, row] = [columnOf(left ?? "A"), Number(top) - 1];
	return {
		tab,
		row,
		column,
		rows: Number(bottom) - row,
		columns: columnOf(right ?? "A") - column + 1,
	};
}

const overlap = (one: Area, other: Area): boolean =>
	one.tab === other.tab &&
	one.row < other.row + other.rows &&
	other.row < one.row + one.rows &&
	one.column < other.column + other.columns &&
	other.column < one.column + one.columns;

/** What a formula reads. */
function readsOf(desk: Desk, tab: string, formula: string): Area[] {
	const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
	return [...bare.matchAll(REFERENCE)].flatMap((match) => {
		const [, quoted, plain, left, top, right, bottom, name] = match;
		if (name) {
			const named = desk.named(name);
			if (!named) return [];
			const cells = new RegExp(`^${CELL}(?::${CELL})?$`).exec(named.range);
			return cells ? [areaFrom(named.tab, cells.slice(1))] : [];
		}
		const own = quoted?.replace(/''/g, "'") ?? plain ?? tab;
		return [areaFrom(own, [left, top, right, bottom])];
	});
}

/** Every formula of the workbook with the cells that it fills. */
function nodesOf(desk: Desk, isCustom: RegExp): Node[] {
	return desk.tabs().flatMap((tab) => {
		const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
		if (!sheet) return [];
		const [rows, columns] = [sheet.getMaxRows(), sheet.getMaxColumns()];
		const range = sheet.getRange(0, 0, rows, columns);
		const formulas = range.getFormulas();
		const shown = desk.read(tab, range.getA1Notation());
		const own = sheet.getSheet();
		const isFilled = (row: number, column: number): boolean =>
			(formulas[row]?.[column] ?? "") === "" &&
			(shown[row]?.[column] ?? "") !== "" &&
			(own.getCellRaw(row, column)?.v ?? "") === "";
		return formulas.flatMap((line, row) =>
			line.flatMap((formula, column): Node[] => {
				if (!formula) return [];
				let right = column + 1;
				while (right < columns && isFilled(row, right)) right += 1;
				let down = row + 1;
				const fills = (at: number) =>
					Array.from({ length: right - column }, (_, i) => column + i).some(
						(one) => isFilled(at, one),
					);
				while (down < rows && fills(down)) down += 1;
				return [
					{
						area: {
							tab,
							row,
							column,
							rows: down - row,
							columns: right - column,
						},
						formula,
						calls: (formula.match(isCustom) ?? []).length,
						reads: readsOf(desk, tab, formula),
					},
				];
			}),
		);
	});
}

/** Levels of the formulas: how many custom calls one after the other until each is answered. */
function levels(nodes: readonly Node[]): number[] {
	const before = nodes.map(({ reads }) =>
		nodes.flatMap(({ area }, i) =>
			reads.some((read) => overlap(read, area)) ? [i] : [],
		),
	);
	const found: (number | undefined)[] = nodes.map(() => undefined);
	const level = (i: number, path: ReadonlySet<number>): number => {
		const known = found[i];
		if (known !== undefined) return known;
		if (path.has(i)) return 0;
		const own = new Set([...path, i]);
		const deepest = Math.max(
			0,
			...(before[i] ?? []).filter((at) => at !== i).map((at) => level(at, own)),
		);
		const answer = deepest + ((nodes[i]?.calls ?? 0) > 0 ? 1 : 0);
		found[i] = answer;
		return answer;
	};
	return nodes.map((_, i) => level(i, new Set()));
}

/** Of all tabs, or of those asked for; a chain is followed through every tab. */
export function roundsOf(
	desk: Desk,
	names: readonly string[],
	counts: (tab: string) => boolean = () => true,
): Rounds {
	const isCustom = new RegExp(`\\b(?:${names.join("|")})\\(`, "g");
	const all = nodesOf(desk, isCustom);
	const depths = levels(all);
	const depth = Math.max(
		0,
		...depths.filter((_, i) => counts(all[i]?.area.tab ?? "")),
	);
	const nodes = all.filter(({ area }) => counts(area.tab));
	return {
		formulas: nodes.length,
		longest: Math.max(0, ...nodes.map(({ formula }) => formula.length)),
		long: nodes.filter(({ formula }) => formula.length > 200).length,
		calls: nodes.reduce((sum, { calls }) => sum + calls, 0),
		depth,
	};
}

/** Seconds until a real sheet has answered a change of one typed cell, and how many custom calls that takes. */
export function answerTime(
	desk: Desk,
	names: readonly string[],
	cell: { tab: string; range: string },
): { calls: number; rounds: number; seconds: number } {
	const isCustom = new RegExp(`\\b(?:${names.join("|")})\\(`, "g");
	const nodes = nodesOf(desk, isCustom);
	const place = new RegExp(`^${CELL}$`).exec(cell.range);
	const changed = areaFrom(cell.tab, place?.slice(1) ?? ["A", "1"]);
	const reached = new Set<number>();
	let areas = [changed];
	while (areas.length > 0) {
		const next = nodes.flatMap(({ reads }, i) =>
			!reached.has(i) &&
			reads.some((read) => areas.some((area) => overlap(read, area)))
				? [i]
				: [],
		);
		for (const i of next) reached.add(i);
		areas = next.flatMap((i) => nodes[i]?.area ?? []);
	}
	const own = [...reached].flatMap((i) => nodes[i] ?? []);
	const calls = new Map<number, number>();
	levels(own).forEach((level, i) => {
		const count = own[i]?.calls ?? 0;
		if (count > 0) calls.set(level, (calls.get(level) ?? 0) + count);
	});
	const rounds = [...calls.values()].reduce(
		(sum, count) => sum + Math.ceil(count / AT_ONCE),
		0,
	);
	return {
		calls: [...calls.values()].reduce((sum, count) => sum + count, 0),
		rounds,
		seconds: rounds * ROUND_S,
	};
}
