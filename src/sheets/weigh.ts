/** Writes what the scale said, unless somebody else has been there. */
import { InputError } from "../calc/errors";
import {
	cardOf,
	cellOf,
	isColumn,
	isNote,
	type Place,
	placeIn,
	planCell,
} from "./cardcells";
import type { MixerState, Typed, Weighed, Weighing } from "./messages";
import { MOST_LOADS, mixerOf, readMixer } from "./mixer";
import { numberIn, plain } from "./plain";
import type { JobRead } from "./readjob";
import { wholly } from "./steps";
import { takeTurn } from "./turn";
import { typedStep } from "./typing";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Longer notes belong elsewhere. */
const LONGEST = 10_000;

/** @throws InputError for what is no weighing. */
function checked(weighing: Weighing): Weighing {
	const { job, load, column, row, value } = weighing;
	const whole = [job, load, row].every(
		(number) => Number.isInteger(number) && number > 0,
	);
	if (!whole || load > MOST_LOADS || !isColumn(column))
		throw new InputError("There is no such cell on the Pour card");
	const least = isNote(column) ? -Infinity : 0;
	if (typeof value === "number" && !(Number.isFinite(value) && value >= least))
		throw new InputError(`A weight is 0 or more, got ${value}`);
	if (typeof value === "string" && value !== "" && !isNote(column))
		throw new InputError(`A weight is a number, got "${value}"`);
	return weighing;
}

/** Reads the card, writes the weight, and the plan's number where the load begins. */
export function weighed(spreadsheet: Spreadsheet, given: Weighing): Weighed {
	const weighing = checked(given);
	takeTurn(spreadsheet);
	const read = readMixer(spreadsheet, weighing.job);
	const place = placeIn(read, cellOf(weighing));
	const why = refusal(read, weighing, plain(place.value));
	const state = mixerOf(read);
	if (why) return { written: false, why, state };
	write(read, weighing, place);
	return { written: true, why: "", state: mixerOf(read) };
}

function refusal(read: JobRead, weighing: Weighing, now: Typed): string {
	const { column, load, value, believed, planNumber } = weighing;
	if (typeof value === "string" && value.length > LONGEST)
		return `A note has at most ${LONGEST} letters`;
	if (now !== believed && now !== value)
		return `Somebody else changed this ${isNote(column) ? "note" : "weight"} (load ${load}, row ${cellOf(weighing).row}): the card says ${now === "" ? "nothing" : now} there`;
	const current = plain(numberIn(read.cell("Pour card.plan_number")));
	if (column === "weights" && value !== "" && planNumber !== current)
		return `The tones were changed meanwhile: this is plan ${current || "unknown"} now, and ${planNumber || "another"} was shown. Look at the steps again`;
	const typed = plain(placeIn(read, planCell(load)).value);
	const other = column === "weights" && typed !== "" && typed !== current;
	return other && value !== ""
		? `Load ${load} was begun with plan ${typed}, and the tones are plan ${current || "unknown"} now: bring back the tones, or clear the weights of this load`
		: "";
}

/** The weight; before it the plan's number, where the load has none. */
function write(read: JobRead, weighing: Weighing, place: Place): void {
	const { load, column, value, planNumber } = weighing;
	const number = placeIn(read, planCell(load));
	const begins =
		!isNote(column) && value !== "" && planNumber !== "" && number.value === "";
	const { sheet, values } = cardOf(read);
	const step = (
		{ row, column: across, value: before, format }: Place,
		now: Typed,
	) =>
		typedStep(sheet.getRange(row + 1, across + 1), now, plain(before), format);
	wholly("The weight was not written", [
		...(begins ? [step(number, planNumber)] : []),
		step(place, value),
	]);
	for (const [{ row, column: across }, now] of [
		...(begins ? ([[number, planNumber]] as const) : []),
		[place, value] as const,
	]) {
		const line = values[row] ?? [];
		values[row] = line;
		line[across] = now;
	}
}

/** Chooses the load that the card shows. */
export function loadChosen(
	spreadsheet: Spreadsheet,
	job: number,
	load: number,
): MixerState {
	takeTurn(spreadsheet);
	const read = readMixer(spreadsheet, job);
	const state = mixerOf(read);
	if (!state.loads.some(({ number }) => number === load))
		throw new InputError(`Job ${job} has no load ${load}`);
	read.range("Pour card.load").setValue(load);
	return { ...state, chosen: load };
}
