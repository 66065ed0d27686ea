import { onTestFinished } from "vitest";
import type { Desk } from "../../src/desk/desk";
import {
	type HeadlessOptions,
	openHeadlessDesk,
} from "../../src/desk/headless";

let live: Desk | undefined;

/** Only one engine may live in a process. */
export function close(): void {
	live?.dispose();
	live = undefined;
}

/** A desk over a small script of the test's own; closed after the test. */
export async function open(
	code: string,
	options: HeadlessOptions = {},
): Promise<Desk> {
	close();
	onTestFinished(close);
	live = await openHeadlessDesk("", {
		enabled: true,
		...options,
		addOn: { name: "Test", code, pages: { Panel: "<p>panel</p>" } },
	});
	return live;
}

/** A script whose entry point `run` has this body; `ss` is the file and `s` its first tab. */
export const entry = (body: string, more = "") =>
	`function run(a, b) { var ss = SpreadsheetApp.getActive(); var s = ss.getSheets()[0]; ${body} }\n${more}`;

/** A tab as the engine has it: what no call of the add-on asks. */
export function tabNamed(desk: Desk, name: string) {
	const tab = desk.engine.api.getActiveWorkbook()?.getSheetByName(name);
	if (!tab) throw new Error(`there is no tab ${name}`);
	return tab.getSheet();
}

/** Runs a body on a fresh desk and answers what it returned. */
export async function ran(
	body: string,
	args: unknown[] = [],
): Promise<unknown> {
	return (await open(entry(body))).call("run", args);
}
