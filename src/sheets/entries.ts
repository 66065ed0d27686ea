/**
 * Everything Google calls by name: triggers, menu items, and what the panel asks for.
 *
 * A cell could call these too. There no service lets anything be written or shown, so that they fail and harm nothing.
 */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { JobInput, UnitSystem } from "../template/job";
import { createdJob } from "./create";
import { keepDraftText, keptDraftText } from "./draft";
import { insertedFormula } from "./insert";
import type { JobMade, PanelStart } from "./messages";
import { showPanel } from "./panel";
import { startOf } from "./start";

/** Builds the add-on's menu, and touches nothing else: it runs before anybody has allowed anything. */
export function onOpen(): void {
	SpreadsheetApp.getUi()
		.createAddonMenu()
		.addItem("Use in this workbook", "useInThisWorkbook")
		.addItem("Start a job", "startAJob")
		.addItem("Open the panel", "openThePanel")
		.addToUi();
}

/** Builds the menu in the file from which the add-on was installed. */
export function onInstall(): void {
	onOpen();
}

/** Says that the functions work here now: running any menu item is what makes them. */
export function useInThisWorkbook(): void {
	SpreadsheetApp.getUi().alert(
		"Tonefold's functions now work in this workbook. Choose Start a job to have its tabs made.",
	);
}

/** Opens the panel, which begins with a new job. */
export function startAJob(): void {
	showPanel();
}

/** Opens the panel. */
export function openThePanel(): void {
	showPanel();
}

/** The studio and its jobs, for the panel. */
export function panelStart(): PanelStart {
	return startOf(SpreadsheetApp.getActiveSpreadsheet());
}

/** Writes the tabs of a job, all of them or none. */
export function createJob(job: JobInput): JobMade {
	return createdJob(job);
}

/** Writes the tabs of the invented job, in these units. */
export function createDemoJob(units: UnitSystem): JobMade {
	if (units !== "metric" && units !== "us")
		throw new InputError(`units must be metric or us, got ${String(units)}`);
	return createdJob(workbook().demo[units]);
}

/** Keeps what a person has not finished typing in the panel. */
export function keepDraft(text: string): number {
	return keepDraftText(text);
}

/** What was kept of it last. */
export function keptDraft(): string {
	return keptDraftText();
}

/** Puts a formula in the current cell and answers the cell's address. */
export function insertFormula(formula: string): string {
	return insertedFormula(formula);
}
