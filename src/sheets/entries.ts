/**
 * Everything Google calls by name: triggers, menu items, and what the panel asks for.
 *
 * A cell could call these too. There no service lets anything be written or shown, so that they fail and harm nothing.
 */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { type FunctionHelp, helpOf } from "../functions/help";
import { registry } from "../functions/index";
import { type Answers, answers as answersFor } from "../job/answers/json";
import { type JobFile, unitsOf } from "../job/jobfile";
import { checkedJob } from "../job/jobmistakes";
import type { UnitSystem } from "../job/reading/units";
import { checkedStudio, type StudioFile } from "../job/studiofile";
import { writeContract } from "./contract/writecontract";
import { keepDraftText, keptDraftText } from "./front/draft";
import { putFormula } from "./front/insertformula";
import {
	closeAsked,
	copyAsked,
	openAsked,
	recordAsked,
	removeAsked,
	told,
} from "./front/menu";
import { openJob } from "./front/openjob";
import { panelStartOf } from "./front/panelstart";
import { openBlock } from "./front/showcell";
import { showPanel } from "./front/sidepanel";
import { closeJobTabs } from "./life/closejob";
import { repeatJob } from "./life/copyjob";
import { writeJob } from "./life/createjob";
import { placePicture } from "./life/putpicture";
import { placeRecipe } from "./life/putrecipe";
import { logPours } from "./life/recordpours";
import { keepSwatch } from "./life/recordswatch";
import { deleteJob } from "./life/removejob";
import { reopenJob } from "./life/reopenjob";
import type {
	Copied,
	JobMade,
	JobState,
	PanelStart,
	Recorded,
	SwatchInput,
	ToneRecipe,
	Weighed,
	Weighing,
} from "./messages";
import { showLoad } from "./mixer/chooseload";
import { putWeight } from "./mixer/weigh";
import { jobStateOf } from "./reading/jobstate";
import { readJob } from "./reading/readjob";
import { wholeStudio } from "./reading/readstudio";

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
		.addItem("Open a closed job", "openAClosedJob")
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

/** Makes a closed job live again. */
export function openAClosedJob(): void {
	told(openAsked);
}

/** Asks, then takes a job's tabs away. */
export function removeAJob(): void {
	told(removeAsked);
}

/** The studio and its jobs, for the panel. */
export function panelStart(): PanelStart {
	return panelStartOf(file());
}

/** Everything typed about a job, as one file. */
export function jobFile(job: number): JobFile {
	return readJob(file(), job).job;
}

/** Everything typed about the studio, as one file. */
export function studioFile(): StudioFile {
	return wholeStudio(file());
}

/** What follows from a job of this workbook. */
export function answers(job: number): Answers {
	const read = readJob(file(), job);
	return answersFor(read.studio.file, read.job);
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
	return answersFor(own, checkedJob(own, job));
}

/** Writes the tabs of a job, all of them or none. */
export function createJob(job: JobFile): JobMade {
	return writeJob(job);
}

/** Writes the tabs of the invented job, in these units. */
export function createDemoJob(units: UnitSystem): JobMade {
	if (units !== "metric" && units !== "us")
		throw new InputError(`units must be metric or us, got ${String(units)}`);
	return writeJob(workbook().demo[units]);
}

/** Keeps what a person has not finished typing in the panel. */
export function keepDraft(text: string): number {
	return keepDraftText(text);
}

/** What was kept of it last. */
export function keptDraft(): string {
	return keptDraftText();
}

/** What every function for cells says to a person. */
export function functionHelp(): FunctionHelp[] {
	return registry.map(helpOf);
}

/** Puts a formula in the current cell and answers the cell's address. */
export function insertFormula(formula: string): string {
	return putFormula(formula);
}

/** Everything that the panel needs of a job. */
export function jobState(job: number): JobState {
	return jobStateOf(file(), job);
}

/** Opens the tab of a block, such as `Job.pieces`, and selects it. */
export function showCell(job: number, cell: string): string {
	return openBlock(file(), job, cell);
}

/** Writes one weight or note on the Pour card. */
export function weigh(weighing: Weighing): Weighed {
	return putWeight(file(), weighing);
}

/** Chooses the load that the Pour card shows. */
export function chooseLoad(job: number, load: number): JobState {
	return showLoad(file(), job, load);
}

/** Puts every finished load of a job in the Pour log. */
export function recordPour(job: number): Recorded {
	return logPours(file(), job);
}

/** Adds a measured sample to the Swatches tab. */
export function recordSwatch(swatch: SwatchInput): number {
	return keepSwatch(file(), swatch);
}

/** Puts the doses of a recipe beside a tone. */
export function putRecipe(recipe: ToneRecipe): JobState {
	return placeRecipe(file(), recipe);
}

/** Puts a picture on the Quote. */
export function putPicture(job: number, png: string): string {
	return placePicture(file(), job, png);
}

/** Puts a drawing on the Mold tab. */
export function putDrawing(job: number, png: string): string {
	return placePicture(file(), job, png, "drawing");
}

/** A repeat order: a new job with the inputs of this one, its tones dosed as planned or as reached. */
export function copyJob(job: number, as: Copied = "planned"): JobMade {
	if (as !== "planned" && as !== "reached")
		throw new InputError(
			`A job is copied as planned or reached, got ${String(as)}`,
		);
	return repeatJob(file(), job, as);
}

/** Keeps a job's tabs as values, hidden; refuses while something is open in it, unless it is to be closed anyway. */
export function closeJob(job: number, anyway = false): string[] {
	const { tabs, open } = closeJobTabs(file(), job, anyway === true);
	if (open.length > 0)
		throw new InputError(`Job ${job} is not closed. ${open.join(". ")}`);
	return tabs;
}

/** Makes a closed job's tabs anew from the file that it keeps. */
export function openJobAgain(job: number): JobMade {
	return reopenJob(file(), job);
}

/** Takes a job's tabs away; whoever calls it asks first. */
export function removeJob(job: number): string[] {
	return deleteJob(file(), job);
}

/** Writes a tab that holds every function to an answer printed elsewhere: to be run from the script editor. */
export function contractCheck(): string {
	return writeContract(file());
}
