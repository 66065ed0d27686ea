/** A small add-on of its own, which the page is given in place of the built one. */
import { deskUrl, sharedBrowser } from "../../run/once";
import { opened, type Visit, visit } from "./visit";

const CODE = `
var count = 0;
function onOpen() { SpreadsheetApp.getUi().createAddonMenu().addItem("Open the panel", "openThePanel").addToUi(); }
function openThePanel() { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("Panel")); }
function createDemoJob() { return null; }
function echo(value) { count += 1; return { value: value, calls: count }; }
function today() { return { day: new Date(0) }; }
function fails() { throw new Error("The mold is not level."); }
function hidden_() { return "secret"; }
/** What a bare script context has not, where it is there all the same. */
function NOT_BARE() {
	return [typeof window, typeof document, typeof fetch, typeof setTimeout, typeof URL, typeof TextEncoder,
		typeof XMLHttpRequest, typeof localStorage, typeof process, typeof require, typeof postMessage]
		.filter(function (kind) { return kind !== "undefined"; }).length;
}`;

/** Its files, by the paths the page asks for. */
export const ADD_ON = {
	"add-on.json": JSON.stringify(["Code.js", "Panel.html"]),
	"add-on/Code.js": CODE,
	"add-on/Panel.html":
		"<!DOCTYPE html><html><head><title>p</title></head><body>Panel</body></html>",
};

/** A visit to an empty workbook with a script in place of the built one, whose menu entry Put is chosen. */
export async function visitPut(code: string): Promise<Visit> {
	const visited = await visit(
		await sharedBrowser(),
		`${await deskUrl()}?empty`,
		{ width: 1280, height: 800 },
		{ "add-on.json": '["Code.js"]', "add-on/Code.js": code },
	);
	await opened(visited.page);
	await visited.page.evaluate(() => window.desk?.choose("Put"));
	return visited;
}

/** What the panel's page is to find. */
interface ScriptRunner {
	withSuccessHandler(
		then: (answer: unknown, user: unknown) => void,
	): ScriptRunner;
	withFailureHandler(then: (error: Error, user: unknown) => void): ScriptRunner;
	withUserObject(user: unknown): ScriptRunner;
	[name: string]: (...args: never[]) => unknown;
}
declare global {
	var google: { script: { run: ScriptRunner; host: { close(): void } } };
}
