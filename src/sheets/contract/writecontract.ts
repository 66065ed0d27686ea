/** The tab that holds every function to an answer printed elsewhere, in the place of the one written before. */

import type { Tab } from "../../../templates/plan";
import { InputError } from "../../calc/errors";
import { registry } from "../../functions/index";
import { takeTurn } from "../life/taketurn";
import { pageOf } from "../writing/page";
import { type Added, reason, takeBack } from "../writing/undo";
import { writePages } from "../writing/writepages";
import { contractTab } from "./contracttab";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The name of the tab, which compares by itself. @throws InputError for a person's own tab of that name. */
export function writeContract(spreadsheet: Spreadsheet): string {
	const contract = contractTab(registry);
	takeTurn(spreadsheet);
	const earlier = spreadsheet.getSheetByName(contract.name);
	const isOurs =
		earlier?.getLastRow() === 0 ||
		earlier?.getRange("A1").getValue() === contract.name;
	if (earlier && !isOurs)
		throw new InputError(
			`This workbook has a tab named ${contract.name} already: rename yours, then try again`,
		);
	const tabs = spreadsheet.getNumSheets() - (earlier ? 1 : 0);
	if (earlier) spreadsheet.deleteSheet(earlier);
	return written(spreadsheet, contract, tabs);
}

function written(spreadsheet: Spreadsheet, tab: Tab, tabs: number): string {
	const open = spreadsheet.getActiveSheet();
	const added: Added = { spreadsheet, open, tabs: [], names: [], cells: [] };
	try {
		const tokens = { units: "metric", tabs: {} } as const;
		writePages([[pageOf({ tab, tokens, prefix: "", slots: {} })]], added, tabs);
		for (const { sheet } of added.tabs) spreadsheet.setActiveSheet(sheet);
		SpreadsheetApp.flush();
		return tab.name;
	} catch (error) {
		const left = takeBack(added);
		throw new Error(
			`The contract was not checked (${[reason(error), ...left].join(", ")})`,
		);
	}
}
