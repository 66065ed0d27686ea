/** The job in one row, as the Jobs tab keeps it. */
import {
	day,
	money,
	number,
	type Row,
	share,
	text,
	whole,
	word,
} from "./field";
import { STAGES } from "./job";

export const JOB_LINE = {
	client: text("Client"),
	title: text("Title"),
	stage: word("Stage", STAGES),
	pour: day("Pour"),
	due: day("Due"),
	price: money("Price", {}, {}),
	cost: money("Cost", {}, {}),
	margin: share("Margin", {}, { min: -1e6 }),
	depositReceived: money("Deposit received", {}, {}),
	balanceReceived: money("Balance received", {}, {}),
	hours: number("Hours"),
	demold: day("Demold"),
	fill: day("Fill"),
	polish: day("Polish"),
	seal: day("Seal"),
	deliver: day("Deliver"),
	toPay: money("Still to be paid", {}, {}),
};

/** A row of the Jobs tab. */
export const JOBS_ROW = { job: whole("Job"), ...JOB_LINE };

export type JobsRow = Row<typeof JOBS_ROW>;
