/** One change at a time, and none upon what a killed run has left. */
import { InputError } from "../../calc/errors";
import {
	type Ending,
	noteDone,
	type Unfinished,
	unfinished,
} from "../writing/journal";
import { isWhole, takeBackMaking } from "../writing/undo";
import { closeTabs } from "./closetabs";
import { closedBefore, removeTabs } from "./removetabs";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

const WAIT_MS = 20_000;
/** Somebody who only opens the panel does not wait. */
const GLANCE_MS = 10;

/** The document's lock until this call ends, which lets it go; a script bound to no file has only its own. */
const isMyTurn = (waitMs: number): boolean =>
	(LockService.getDocumentLock() ?? LockService.getScriptLock()).tryLock(
		waitMs,
	);

/**
 * Makes sure that nobody else changes the workbook through the add-on until this call ends, and takes back or finishes
 * what a killed run has left. Answers the tabs of the job where that finished what this call is for.
 *
 * @throws InputError when somebody else has the turn for so long, or when a job was closed or removed just now: cells
 * that this call would read may still calculate.
 */
export function takeTurn(
	spreadsheet: Spreadsheet,
	own?: Pick<Ending, "act" | "job">,
): string[] | undefined {
	if (!isMyTurn(WAIT_MS))
		throw new InputError(
			"Somebody else is changing a job in this workbook. Wait a moment, then try again.",
		);
	const isOwn = (entry: Unfinished): boolean =>
		entry.act === own?.act && entry.job === own.job;
	const ended = endedNow(spreadsheet, isOwn);
	const other = ended.find(({ entry }) => !isOwn(entry));
	if (other)
		throw new InputError(
			`An earlier call was cut short while ${other.entry.act} job ${other.entry.job}. That is done now: try again.`,
		);
	return ended[0]?.tabs;
}

/** Takes back or finishes what a killed run has left, unless somebody changes the workbook right now. */
export function tidyUp(spreadsheet: Spreadsheet): void {
	if (unfinished().length > 0 && isMyTurn(GLANCE_MS)) endedNow(spreadsheet);
}

interface Ended {
	entry: Ending;
	tabs: string[];
}

/**
 * What was closed or removed to its end. What cannot be finished now is tried again by the next call, and holds up none
 * but the one that is for it.
 */
function endedNow(
	spreadsheet: Spreadsheet,
	isOwn: (entry: Unfinished) => boolean = () => false,
): Ended[] {
	return unfinished().flatMap((entry) => {
		try {
			return finish(spreadsheet, entry);
		} catch (error) {
			if (isOwn(entry)) throw error;
			return [];
		}
	});
}

function finish(spreadsheet: Spreadsheet, entry: Unfinished): Ended[] {
	if (entry.act === "making") {
		if (entry.aside && isWhole(spreadsheet, entry))
			removeTabs(spreadsheet, closedBefore(entry.job, entry.aside));
		else if (takeBackMaking(spreadsheet, entry).length > 0) return [];
		noteDone(entry);
		return [];
	}
	if (entry.act === "recording") {
		spreadsheet.getRange(entry.cells).setNumberFormats(entry.formats);
		noteDone(entry);
		return [];
	}
	const end = entry.act === "closing" ? closeTabs : removeTabs;
	return [{ entry, tabs: end(spreadsheet, entry) }];
}
