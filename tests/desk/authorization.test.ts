/** What each mode allows: developers.google.com/workspace/add-ons/concepts/editor-auth-lifecycle. */
import { expect, it } from "vitest";
import type { Mode } from "../../src/desk/desk";
import { entry, open } from "./open";

const MENU =
	"SpreadsheetApp.getUi().createAddonMenu().addItem('Go', 'go').addToUi();";

it.each<[Mode, string, boolean]>([
	["NONE", MENU, true],
	["NONE", "SpreadsheetApp.getActive();", false],
	["NONE", "PropertiesService.getDocumentProperties();", false],
	["NONE", "LockService.getDocumentLock();", false],
	["NONE", "HtmlService.createHtmlOutputFromFile('Panel');", false],
	["LIMITED", MENU, true],
	["LIMITED", "SpreadsheetApp.getActive().getNumSheets();", true],
	["LIMITED", "PropertiesService.getDocumentProperties().getKeys();", true],
	["LIMITED", "SpreadsheetApp.getUi().alert('x');", false],
	[
		"LIMITED",
		"SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Panel'));",
		false,
	],
	["FULL", "SpreadsheetApp.getUi().alert('x');", true],
	[
		"FULL",
		"SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Panel'));",
		true,
	],
])("in %s: %s allowed: %s", async (mode, body, allowed) => {
	const desk = await open(`function run() { ${body} }`);
	const call = desk.call("run", [], { mode });
	if (allowed) await call;
	else
		await expect(call).rejects.toThrow(/^You do not have permission to call /);
});

it("a service touched by global code breaks onOpen of a file where the add-on is not enabled", async () => {
	const code = `var tabs = SpreadsheetApp.getActive().getNumSheets();\nfunction onOpen() { ${MENU} }`;
	await expect(open(code, { enabled: false })).rejects.toThrow(
		"You do not have permission to call SpreadsheetApp.getActive.",
	);
});

it("onOpen is told its mode", async () => {
	const code = `function onOpen(e) { SpreadsheetApp.getUi().createAddonMenu().addItem(e.authMode, "go").addToUi(); }`;
	const told = async (enabled: boolean) =>
		(await open(code, { enabled })).menus()[0]?.items[0]?.label;
	expect(await told(false)).toBe("NONE");
	expect(await told(true)).toBe("LIMITED");
});

it("a menu item without its function says so", async () => {
	const desk = await open(`function onOpen() { ${MENU} }`);
	expect(desk.menus()).toEqual([
		{ title: "Test", items: [{ label: "Go", run: "go" }] },
	]);
	await expect(desk.choose("Go")).rejects.toThrow(
		"Script function not found: go",
	);
});

it("the person answers what is asked, and sees the panel", async () => {
	const seen: unknown[] = [];
	const desk = await open(
		entry(
			"var ui = SpreadsheetApp.getUi(); var b = ui.alert('Remove?', 'Job 1 goes', ui.ButtonSet.YES_NO); var p = ui.prompt('Name?'); ui.showSidebar(HtmlService.createHtmlOutputFromFile('Panel').setTitle('Here')); return [b == ui.Button.YES, p.getSelectedButton() == ui.Button.OK, p.getResponseText()];",
		),
		{
			person: {
				alert: (question) => {
					seen.push(question);
					return "YES";
				},
				prompt: () => ({ button: "OK", text: "Slab" }),
			},
		},
	);
	expect(await desk.call("run")).toEqual([true, true, "Slab"]);
	expect(seen).toEqual([
		{ title: "Remove?", text: "Job 1 goes", buttons: ["YES", "NO"] },
	]);
	expect(desk.sidebar()).toEqual({ title: "Here", html: "<p>panel</p>" });
	desk.closeSidebar();
	expect(desk.sidebar()).toBeUndefined();
});
