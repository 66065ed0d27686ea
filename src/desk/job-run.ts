/** A job without a browser: from a file to the pour card as text. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { messageOf } from "./bridge";
import type { CellError, Desk } from "./contract";
import { csv } from "./csv";
import { openHeadlessDesk } from "./headless";
import { textTable } from "./print";

export interface JobRun {
	/** What came after the command's name. */
	args: readonly string[];
	/** Folder that file names are read from. */
	folder: string;
	/** Folder of the built add-on. */
	dist: string;
	out(text: string): void;
	err(text: string): void;
}

const USAGE = "npm run job -- FILE.json [--csv DIR]";

/** A sentence for the person at the command line. */
class Refusal extends Error {}

function readArguments(args: readonly string[]) {
	const rest = [...args];
	const at = rest.indexOf("--csv");
	const [, csvFolder] = at < 0 ? [] : rest.splice(at, 2);
	if (at >= 0 && (csvFolder === undefined || csvFolder.startsWith("--")))
		throw new Refusal(`--csv needs a folder: ${USAGE}`);
	const [file, ...more] = rest;
	if (file === undefined) throw new Refusal(`name the job's file: ${USAGE}`);
	const strange = [file, ...more].find(
		(arg, index) => index > 0 || arg.startsWith("--"),
	);
	if (strange) throw new Refusal(`${strange} is not understood: ${USAGE}`);
	return { file, csvFolder };
}

function readJob(file: string): unknown {
	let text: string;
	try {
		text = readFileSync(file, "utf8");
	} catch {
		throw new Refusal(`${file} cannot be read`);
	}
	try {
		return JSON.parse(text);
	} catch (error) {
		throw new Refusal(`${file} is not JSON: ${messageOf(error)}`);
	}
}

/** The pour card as it stands: what is in sight of its tab. */
function cardText(desk: Desk, tab: string): string {
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
	if (!sheet) throw new Error(`there is no tab ${tab}`);
	const grid = sheet.getSheet();
	const all = { rows: grid.getRowCount(), columns: grid.getColumnCount() };
	const columns = Array.from(
		{ length: all.columns },
		(_, index) => index,
	).filter((column) => grid.getColVisible(column));
	const range = sheet.getRange(0, 0, all.rows, all.columns).getA1Notation();
	const values = desk.read(tab, range);
	return textTable(
		desk.display(tab, range).map((row, index) =>
			columns.map((column) => ({
				text: row[column] ?? "",
				isNumber: typeof values[index]?.[column] === "number",
			})),
		),
	);
}

/** Calls `each` for every load of the job, the pour card showing it. */
async function forEachLoad(
	desk: Desk,
	job: number,
	each: (card: string, load: number, loads: number) => void,
): Promise<void> {
	const chosen = desk.named(`job${job}_load`);
	const count = desk.named(`job${job}_loads`);
	if (!chosen || !count)
		throw new Error(`job ${job} has no pour card with loads`);
	const [[loads] = []] = desk.read(count.tab, count.range);
	if (typeof loads !== "number" || loads < 1)
		throw new Error(
			`job ${job} has no loads to print: ${count.tab}!${count.range} says ${loads || "nothing"}`,
		);
	for (let load = 1; load <= loads; load++) {
		desk.type(chosen.tab, chosen.range, String(load));
		await desk.settle();
		each(cardText(desk, chosen.tab), load, loads);
	}
	desk.type(chosen.tab, chosen.range, "1");
	await desk.settle();
}

function writeCsv(desk: Desk, folder: string): string[] {
	mkdirSync(folder, { recursive: true });
	return desk.tabs().map((tab) => {
		const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
		const rows = sheet?.getSheet().getRowCount() ?? 1;
		const columns = sheet?.getSheet().getColumnCount() ?? 1;
		const range = sheet?.getRange(0, 0, rows, columns).getA1Notation() ?? "A1";
		const file = join(folder, `${tab.replace(/[\\/:*?"<>|]/g, "_")}.csv`);
		writeFileSync(file, csv(desk.read(tab, range)));
		return file;
	});
}

function errorLine({ tab, cell, shown, message }: CellError): string {
	return `${tab}!${cell}: ${shown}${message ? ` ${message}` : ""}`;
}

async function makeJob(
	desk: Desk,
	run: JobRun,
	job: unknown,
	csvFolder: string | undefined,
): Promise<number> {
	const made = (await desk.call("createJob", [job])) as { number: number };
	const wrong = new Map<string, string>();
	const note = (when: string) => {
		for (const error of desk.errors()) {
			const line = errorLine(error);
			if (!wrong.has(line)) wrong.set(line, when);
		}
	};
	note("");
	await forEachLoad(desk, made.number, (card, load, loads) => {
		run.out(
			`===== Job ${made.number}, load ${load} of ${loads} =====\n\n${card}\n`,
		);
		note(`load ${load}: `);
	});
	if (csvFolder !== undefined)
		for (const written of writeCsv(desk, resolve(run.folder, csvFolder)))
			run.out(written);
	if (wrong.size === 0) return 0;
	run.err(`ERRORS IN THE WORKBOOK: ${wrong.size}; do not pour from this card`);
	for (const [line, when] of wrong) run.err(`  ${when}${line}`);
	return 1;
}

/** Makes the job and prints its pour card, load by load. Answers the exit code. */
export async function runJob(run: JobRun): Promise<number> {
	let desk: Desk | undefined;
	try {
		const { file, csvFolder } = readArguments(run.args);
		const job = readJob(resolve(run.folder, file));
		desk = await openHeadlessDesk(run.dist, { enabled: true });
		return await makeJob(desk, run, job, csvFolder);
	} catch (error) {
		run.err(messageOf(error));
		return 1;
	} finally {
		desk?.dispose();
	}
}
