/** A job without a browser: from a file to the pour card as text. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { messageOf } from "./bridge";
import { forEachLoad } from "./card";
import type { CellError, Desk } from "./contract";
import { csv } from "./csv";
import { openHeadlessDesk } from "./headless";

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

const USAGE =
	"npm run job -- FILE.json [--csv DIR] or npm run job -- FILE.json [--studio STUDIO.json] --json";

/** A sentence for the person at the command line. */
class Refusal extends Error {}

/** The value behind an option, both taken out of the arguments. */
function taken(rest: string[], option: string, what: string) {
	const at = rest.indexOf(option);
	if (at < 0) return undefined;
	const [, value] = rest.splice(at, 2);
	if (value === undefined || value.startsWith("--"))
		throw new Refusal(`${option} needs ${what}: ${USAGE}`);
	return value;
}

function readArguments(args: readonly string[]) {
	const rest = [...args];
	const csvFolder = taken(rest, "--csv", "a folder");
	const studio = taken(rest, "--studio", "a file");
	const json = rest.includes("--json");
	if (json) rest.splice(rest.indexOf("--json"), 1);
	const [file, ...more] = rest;
	if (file === undefined) throw new Refusal(`name the job's file: ${USAGE}`);
	const strange = [file, ...more].find(
		(arg, index) => index > 0 || arg.startsWith("--"),
	);
	if (strange) throw new Refusal(`${strange} is not understood: ${USAGE}`);
	if (studio !== undefined && !json)
		throw new Refusal(`--studio goes with --json: ${USAGE}`);
	return { file, csvFolder, studio, json };
}

function readJson(file: string): unknown {
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

/** Error cells as they are met: a load may have some of its own. */
function errorList(desk: Desk) {
	const lines = new Map<string, string>();
	return {
		note(when: string) {
			for (const line of desk.errors().map(errorLine))
				if (!lines.has(line)) lines.set(line, when);
		},
		lines: () => [...lines].map(([line, when]) => `  ${when}${line}`),
	};
}

/** Prints the card of every load. Answers what is wrong with it, in lines. */
async function printCards(
	desk: Desk,
	run: JobRun,
	job: number,
): Promise<string[]> {
	const errors = errorList(desk);
	const problems: string[] = [];
	errors.note("");
	try {
		await forEachLoad(desk, job, (card, load, loads) => {
			run.out(`===== Job ${job}, load ${load} of ${loads} =====\n\n${card}\n`);
			errors.note(`load ${load}: `);
		});
	} catch (error) {
		problems.push(messageOf(error));
	}
	const lines = errors.lines();
	if (lines.length > 0)
		problems.push(
			`ERRORS IN THE WORKBOOK: ${lines.length}; do not pour from this card`,
			...lines,
		);
	return problems;
}

async function makeJob(
	desk: Desk,
	run: JobRun,
	job: unknown,
	csvFolder: string | undefined,
): Promise<number> {
	const made = (await desk.call("createJob", [job])) as { number: number };
	const problems = await printCards(desk, run, made.number);
	if (csvFolder !== undefined)
		for (const written of writeCsv(desk, resolve(run.folder, csvFolder)))
			run.out(written);
	for (const problem of problems) run.err(problem);
	return problems.length === 0 ? 0 : 1;
}

/** Makes the job and prints its pour card, load by load. Answers the exit code. */
export async function runJob(run: JobRun): Promise<number> {
	let desk: Desk | undefined;
	try {
		const { file, csvFolder, studio, json } = readArguments(run.args);
		const job = readJson(resolve(run.folder, file));
		desk = await openHeadlessDesk(run.dist, { enabled: true });
		if (!json) return await makeJob(desk, run, job, csvFolder);
		const own =
			studio === undefined ? null : readJson(resolve(run.folder, studio));
		const answers = await desk.call("answersOf", [job, own]);
		run.out(JSON.stringify(answers, null, "\t"));
		return 0;
	} catch (error) {
		run.err(messageOf(error));
		return 1;
	} finally {
		desk?.dispose();
	}
}
