/**
 * Everything Google calls by name: triggers, menu items, and what the panel asks for.
 *
 * A cell could call these too. There no service lets anything be written or shown, so that they fail and harm nothing.
 */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { type Answers, answers } from "../job/answers/json";
import { type JobFile, unitsOf } from "../job/jobfile";
import { checkedJob } from "../job/jobmistakes";
import type { UnitSystem } from "../job/reading/units";
import { checkedStudio, type StudioFile } from "../job/studiofile";
import { cellShown, checksOf } from "./checks";
import { closedJob } from "./close";
import { contractWritten } from "./contract";
import { copiedJob } from "./copy";
import { createdJob } from "./create";
import { keepDraftText, keptDraftText } from "./draft";
import { insertedFormula } from "./insert";
import { closeAsked, copyAsked, recordAsked, removeAsked, told } from "./menu";
import type {
	JobChecks,
	JobMade,
	JobView,
	MixerState,
	PanelStart,
	Recorded,
	SwatchInput,
	Weighed,
	Weighing,
} from "./messages";
import { mixerOf, readMixer } from "./mixer";
import { openJob } from "./openjob";
import { showPanel } from "./panel";
import { picturePut } from "./picture";
import { poursRecorded } from "./pours";
import { removedJob } from "./remove";
import { startOf } from "./start";
import { swatchRecorded } from "./swatches";
import { studioFileOf } from "./typedstudio";
import { viewOf } from "./view";
import { loadChosen, weighed } from "./weigh";

const file = () => SpreadsheetApp.getActiveSpreadsheet();

/** Builds the add-on's menu, and touches nothing else: it runs before anybody has allowed anything. */
export function onOpen(): void {
	SpreadsheetApp.getUi()
		.createAddonMenu()
		.addItem("Use in this workbook", "useInThisWorkbook")
		.addItem("Start a job", "startAJob")
		.addItem("Open the panel", "openThePanel")
		.addItem("Check this job", "checkThisJob")
		.addItem("Record a pour", "recordAPour")
		.addItem("Copy a job", "copyAJob")
		.addItem("Close a job", "closeAJob")
		.addItem("Remove a job", "removeAJob")
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

/** Opens the panel with a new job. */
export function startAJob(): void {
	showPanel({ view: "newjob" });
}

/** Opens the panel. */
export function openThePanel(): void {
	showPanel({});
}

/** Opens the panel with the checks of the job whose tab is open. */
export function checkThisJob(): void {
	showPanel({ view: "checks", job: openJob(file()) });
}

/** Puts what was weighed in the Pour log. */
export function recordAPour(): void {
	told(recordAsked);
}

/** Makes a job with the inputs of another. */
export function copyAJob(): void {
	told(copyAsked);
}

/** Keeps a finished job's tabs as values, hidden. */
export function closeAJob(): void {
	told(closeAsked);
}

/** Asks, then takes a job's tabs away. */
export function removeAJob(): void {
	told(removeAsked);
}

/** The studio and its jobs, for the panel. */
export function panelStart(): PanelStart {
	return startOf(file());
}

/**
 * What follows from a job file and a studio file, without a workbook.
 *
 * Without a studio file the studio is the one that a new workbook begins with.
 */
export function answersOf(job: unknown, studio?: unknown): Answers {
	const own =
		studio === undefined || studio === null
			? workbook().starterStudios[unitsOf(job)]
			: checkedStudio(studio);
	return answers(own, checkedJob(own, job));
}

/** Everything typed about the studio, as one file. */
export function studioFile(): StudioFile {
	return studioFileOf(file());
}

/** Writes the tabs of a job, all of them or none. */
export function createJob(job: JobFile): JobMade {
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

/** The checks of a job, for the panel. */
export function checkJob(job: number): JobChecks {
	return checksOf(file(), job);
}

/** Opens the tab and the cell that a check names. */
export function showCell(job: number, cell: string): string {
	return cellShown(file(), job, cell);
}

/** What the panel needs beside the mixer. */
export function mixerState(job: number): MixerState {
	return mixerOf(readMixer(file(), job));
}

/** Writes one weight or note on the Pour card. */
export function mixerWeigh(weighing: Weighing): Weighed {
	return weighed(file(), weighing);
}

/** Chooses the load that the Pour card shows. */
export function mixerChoose(job: number, load: number): MixerState {
	return loadChosen(file(), job, load);
}

/** Puts every weighed load of a job in the Pour log. */
export function recordPour(job: number): Recorded {
	return poursRecorded(file(), job);
}

/** Adds a measured sample to the Swatches tab. */
export function recordSwatch(swatch: SwatchInput): number {
	return swatchRecorded(file(), swatch);
}

/** What the picture of a job is drawn from. */
export function jobView(job: number): JobView {
	return viewOf(file(), job);
}

/** Puts a picture on the Quote. */
export function putPicture(job: number, png: string): string {
	return picturePut(file(), job, png);
}

/** A repeat order: a new job with the inputs of this one. */
export function copyJob(job: number): JobMade {
	return copiedJob(file(), job);
}

/** Keeps a job's tabs as values, hidden. */
export function closeJob(job: number): string[] {
	return closedJob(file(), job);
}

/** Takes a job's tabs away; whoever calls it asks first. */
export function removeJob(job: number): string[] {
	return removedJob(file(), job);
}

/** Writes a tab that holds every function to an answer printed elsewhere: to be run from the script editor. */
export function contractCheck(): string {
	return contractWritten(file());
}
