/** Writes what the scale said, unless somebody else has been there. */
import { InputError } from "../../calc/errors";
import { basisOf } from "../../job/answers/basis";
import { isFinished } from "../../job/answers/card/loadpour";
import { planNumberOf } from "../../job/answers/card/planfit";
import { orNull } from "../../job/answers/known";
import { cellOf } from "../../job/cells/jobslots";
import type { Typed } from "../../job/fields/field";
import { POUR } from "../../job/fields/pour";
import { MOST } from "../../job/jobfile";
import { takeTurn } from "../life/taketurn";
import type { Weighed, Weighing } from "../messages";
import { momentText } from "../reading/filetime";
import { stateOf } from "../reading/jobstate";
import { type JobRead, readJob } from "../reading/readjob";
import { type Change, typeInto } from "../writing/typeinto";
import { type CardPlace, cardPlace, noCell, PLAN_NUMBER } from "./cardcell";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Longer notes belong elsewhere. */
const LONGEST = 10_000;

const isNote = ({ cell }: Weighing): boolean => "note" in cell;

/** A name of a tone, or pigments with their grams. */
const isText = ({ cell }: Weighing): boolean =>
	"note" in cell ||
	("correction" in cell && ["tone", "added"].includes(cell.part));

/** @throws InputError for what is no weighing. */
function checked(weighing: Weighing): Weighing {
	const { load, cell, value } = weighing;
	if (
		!(Number.isInteger(load) && load > 0 && load <= MOST.pours) ||
		typeof cell !== "object" ||
		cell === null
	)
		throw new InputError(noCell());
	const least = isNote(weighing) ? -Infinity : 0;
	if (typeof value === "number" && !(Number.isFinite(value) && value >= least))
		throw new InputError(`A weight is 0 or more, got ${value}`);
	if (typeof value === "string" && value !== "" && !isText(weighing))
		throw new InputError(`A weight is a number, got "${value}"`);
	return weighing;
}

/** Reads the card, writes the weight or the note, and the plan's number where the load begins. */
export function putWeight(spreadsheet: Spreadsheet, given: Weighing): Weighed {
	const weighing = checked(given);
	takeTurn(spreadsheet);
	const read = readJob(spreadsheet, weighing.job);
	const place = cardPlace(read, weighing);
	const plan = cardPlace(read, { ...weighing, cell: PLAN_NUMBER });
	const why = refusal(read, weighing, place.value, plan.value);
	// read before anything is written: what fails after the weight is written would say that it was not
	const state = stateOf(spreadsheet, read);
	if (why) return { written: false, why, state };
	const changes = [
		...(begins(weighing, plan)
			? [{ ...plan, typed: weighing.planNumber }]
			: []),
		...finishedToday(read, weighing),
		{
			...place,
			typed: weighing.value,
			cell: cellFor(weighing, weighing.value),
		},
	];
	const { job } = typeInto(read, "card", changes, "The weight was not written");
	return { written: true, why: "", state: { ...state, job } };
}

function refusal(
	read: JobRead,
	weighing: Weighing,
	now: Typed,
	begunWith: Typed,
): string {
	const { cell, load, value, believed, planNumber } = weighing;
	if (typeof value === "string" && value.length > LONGEST)
		return `A note has at most ${LONGEST} letters`;
	if (now !== believed && now !== value)
		return `Somebody else changed this ${isNote(weighing) ? "note" : "weight"} of load ${load}: the card says ${now === "" ? "nothing" : now} there`;
	const isOfPlan = "step" in cell && cell.step > 0;
	if (!isOfPlan || value === "") return "";
	const current =
		orNull(planNumberOf(basisOf(read.studio.file, read.job))) ?? "";
	if (planNumber !== current)
		return `The tones were changed meanwhile: this is plan ${current || "unknown"} now, and ${planNumber || "another"} was shown. Look at the steps again`;
	return begunWith !== "" && begunWith !== current
		? `Load ${load} was begun with plan ${begunWith}, and the tones are plan ${current || "unknown"} now: bring back the tones, or clear the weights of this load`
		: "";
}

/** A day as cells count days. */
const cellFor = ({ cell }: Weighing, value: Typed): Typed =>
	"note" in cell ? cellOf(POUR[cell.note], value) : value;

/** Whether the load has no plan's number yet, with its first weight. */
const begins = (weighing: Weighing, plan: CardPlace): boolean =>
	!isNote(weighing) &&
	weighing.value !== "" &&
	weighing.planNumber !== "" &&
	plan.value === "";

/** The day of a load that is said to be finished and has none. */
function finishedToday(
	read: JobRead,
	{ load, cell, value }: Weighing,
): Change[] {
	const isSaid =
		"note" in cell &&
		cell.note === "finished" &&
		isFinished({ finished: value });
	if (!isSaid) return [];
	const day = cardPlace(read, { load, cell: { note: "pouredOn" } });
	const today = momentText(new Date()).slice(0, 10);
	return day.value === ""
		? [{ ...day, typed: today, cell: cellOf(POUR.pouredOn, today) }]
		: [];
}
