/** What the two scopes do not reach, and the one panel there is: tests of rules 9 and 10 of the platform. */
import { describe, expect, it } from "vitest";
import { entry, open, ran } from "./open";

describe("beyond the open file and its panel", () => {
	it.each([
		"SpreadsheetApp.create('x');",
		"SpreadsheetApp.openById('x');",
		"SpreadsheetApp.openByUrl('x');",
		"HtmlService.createHtmlOutput('<p>made up</p>');",
	])("%s is refused", (body) =>
		expect(ran(body)).rejects.toThrow(/is not a function$/),
	);

	it.each([
		"ScriptApp.newTrigger('run');",
		"Session.getActiveUser();",
		"UrlFetchApp.fetch('https://example.org');",
		"DriveApp.getFiles();",
		"MailApp.sendEmail('a', 'b', 'c');",
		"Sheets.Spreadsheets.get('x');",
	])("%s is refused: the service is not there", (body) =>
		expect(ran(body)).rejects.toThrow(/is not defined$/),
	);
});

it("a second panel takes the place of the first", async () => {
	const desk = await open(
		entry(
			"['One', 'Two'].forEach(function (t) { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Panel').setTitle(t)); });",
		),
	);
	await desk.call("run");
	expect(desk.sidebar()?.title).toBe("Two");
	desk.closeSidebar();
	expect(desk.sidebar()).toBeUndefined();
});
