/** What the menu's entries ask, do and say. */
import { InputError } from "../../calc/errors";
import { isWeighed } from "../../job/answers/card/loadpour";
import { closeJobTabs } from "../life/closejob";
import { repeatJob } from "../life/copyjob";
import { logPours } from "../life/recordpours";
import { belongings, deleteJob } from "../life/removejob";
import { reopenJob } from "../life/reopenjob";
import { readJob } from "../reading/readjob";
import { openJob } from "./openjob";

const ui = () => SpreadsheetApp.getUi();
const file = () => SpreadsheetApp.getActiveSpreadsheet();

/** The job whose tab is open, or the one whose number the person types; 0 when they changed their mind. */
export function askedJob(what: string, open = openJob(file())): number {
	if (open > 0) return open;
	const answer = ui().prompt(
		what,
		"Number of the job:",
		ui().ButtonSet.OK_CANCEL,
	);
	if (answer.getSelectedButton() !== ui().Button.OK) return 0;
	const typed = answer.getResponseText().trim();
	if (/^\d{1,6}$/.test(typed) && Number(typed) > 0) return Number(typed);
	throw new InputError(`A job's number is 1 or more, got "${typed}"`);
}

/** Tells what went wrong in a window of its own: a menu entry's error is one line that is easily missed. */
export function told(work: () => string): void {
	let text: string;
	try {
		text = work();
	} catch (error) {
		text = error instanceof Error ? error.message : String(error);
	}
	if (text !== "") ui().alert(text);
}

const agreed = (question: string): boolean =>
	ui().alert(question, ui().ButtonSet.YES_NO) === ui().Button.YES;

export function copyAsked(): string {
	const job = askedJob("Copy a job");
	if (job === 0) return "";
	const { pours = [] } = readJob(file(), job).job;
	const as =
		pours.some(isWeighed) &&
		agreed(
			`Copy job ${job} with the doses that its weighed loads reached? No copies the doses as planned.`,
		)
			? "reached"
			: "planned";
	const { number } = repeatJob(file(), job, as);
	return `Job ${number} is a copy of job ${job} with the doses ${as}, without its dates, weights, payments and what was agreed.`;
}

export function closeAsked(): string {
	const job = askedJob("Close a job");
	const question = `Close job ${job}? Its tabs are kept as values and hidden, and do not calculate any more. Open a closed job brings it back.`;
	if (job === 0 || !agreed(question)) return "";
	const { tabs, open } = closeJobTabs(file(), job, false);
	if (open.length === 0) return closedText(job, tabs);
	const sentences = open.map((sentence) => `${sentence}.`).join("\n");
	if (!agreed(`${sentences}\nClose job ${job} all the same?`)) return "";
	return closedText(job, closeJobTabs(file(), job, true).tabs);
}

const closedText = (job: number, tabs: readonly string[]): string =>
	`Job ${job} is closed. Its tabs are hidden: ${tabs.join(", ")}. A payment that comes later goes beside those received on the Jobs tab.`;

export function openAsked(): string {
	const job = askedJob("Open a closed job", 0);
	if (job === 0) return "";
	reopenJob(file(), job);
	return `Job ${job} is open again, with what was typed in it. A picture on its quote is not: put it there again.`;
}

export function removeAsked(): string {
	const job = askedJob("Remove a job");
	if (job === 0) return "";
	const tabs = belongings(file(), job).map(({ sheet }) => sheet.getName());
	if (tabs.length === 0)
		throw new InputError(`There is no job ${job} in this workbook`);
	const question = `Remove job ${job}? These tabs go, and its row on the Jobs tab: ${tabs.join(", ")}. Its rows of the Pour log stay.`;
	if (!agreed(question)) return "";
	deleteJob(file(), job);
	return `Job ${job} is gone.`;
}

export function recordAsked(): string {
	const job = askedJob("Record a pour");
	if (job === 0) return "";
	const { loads, again = [], left } = logPours(file(), job);
	const done = [
		...(loads.length > 0
			? [`The Pour log now has load ${loads.join(", ")} of job ${job}.`]
			: []),
		...(again.length > 0
			? [`The row of load ${again.join(", ")} of job ${job} is written anew.`]
			: []),
	];
	if (done.length === 0)
		done.push(`There is nothing new to record of job ${job}.`);
	return [...done, ...left.map((sentence) => `${sentence}.`)].join("\n");
}
