import { join } from "node:path";
import type { Counts, Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { cellOf } from "../job/found";
import { customNames } from "./rounds";
import { ms, type Row, times, worked } from "./row";

const DIST = join(import.meta.dirname, "../../dist");

const CUSTOM = new RegExp(`\\b(${customNames.join("|")})\\(`);

interface Cells {
	/** With a value or a formula: what writing one cell a call would call. */
	written: number;
	/** With a value that a sheet function put there: what one call a cell would call. */
	answered: number;
}

function cellsOf(desk: Desk, tab: string): Cells {
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
	if (!sheet) throw new Error(`there is no tab ${tab}`);
	const rows = sheet.getMaxRows();
	const columns = sheet.getMaxColumns();
	const range = sheet.getRange(0, 0, rows, columns);
	const formulas = range.getFormulas();
	const shown = desk.read(tab, range.getA1Notation()).flat();
	const own = sheet.getSheet();
	const cells = shown.map((value, i) => {
		const [row, column] = [Math.floor(i / columns), i % columns];
		const formula = formulas[row]?.[column] ?? "";
		const typed = own.getCellRaw(row, column)?.v ?? "";
		return { formula, spilled: value !== "" && typed === "", typed };
	});
	return {
		written: cells.filter(({ formula, typed }) => formula || typed !== "")
			.length,
		answered: cells.filter(
			({ formula, spilled }) => CUSTOM.test(formula) || (!formula && spilled),
		).length,
	};
}

function allCells(desk: Desk): Cells {
	const cells = desk.tabs().map((tab) => cellsOf(desk, tab));
	const sum = (key: keyof Cells) =>
		cells.reduce((total, tab) => total + tab[key], 0);
	return { written: sum("written"), answered: sum("answered") };
}

async function timed(run: () => Promise<unknown>): Promise<number> {
	const started = process.cpuUsage();
	await run();
	return worked(started);
}

async function recalculated(desk: Desk): Promise<void> {
	const formulas = desk.engine.api.getFormula();
	formulas.executeCalculation();
	await formulas.onCalculationEnd();
	await desk.settle();
}

/** Calls that put a rule together in the script itself do not reach the workbook. */
const BUILDING = /Builder\.|\.new(?:DataValidation|ConditionalFormatRule)$/;

const reaching = (byName: Counts["byName"]): number =>
	Object.entries(byName)
		.filter(([name]) => !BUILDING.test(name))
		.reduce((sum, [, count]) => sum + count, 0);

/** The demo job on the headless desk: written, recalculated, changed in one cell. */
export async function demoRows(): Promise<Row[]> {
	const desk = await openHeadlessDesk(DIST, { enabled: true });
	const creating = await timed(() => desk.call("createDemoJob", ["metric"]));
	const { services, byName } = desk.counts();
	const { written, answered } = allCells(desk);
	desk.resetCounts();
	const whole = await timed(() => recalculated(desk));
	const { functions } = desk.counts();
	const edit = await edited(desk);
	desk.dispose();
	return [
		{
			what: "Demo job, service calls",
			figure: String(services),
			beside: `limit 400; ${reaching(byName)} reach the workbook; one a cell would be ${written}, ${times(written, services)}`,
		},
		{
			what: "Demo job, sheet function calls of a whole recalculation",
			figure: String(functions),
			beside: `limit 40; one a cell would be ${answered}, ${times(answered, functions)}`,
		},
		{
			what: "Demo job, written and at rest",
			figure: ms(creating),
			beside: `${times(creating, whole)} a whole recalculation`,
		},
		{
			what: "Demo job, recalculated",
			figure: ms(whole),
			beside: `${times(whole, edit)} one length changed`,
		},
		{
			what: "Demo job, one length changed",
			figure: ms(edit),
			beside: `${times(edit, whole)} a whole recalculation`,
		},
	];
}

/** Milliseconds until a changed piece has reached every cell. */
function edited(desk: Desk): Promise<number> {
	return timed(async () => {
		desk.type(...cellOf("Job.pieces", 0, 3), "2500");
		await desk.settle();
	});
}
