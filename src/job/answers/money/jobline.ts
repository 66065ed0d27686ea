/** The job's row on the Jobs tab. */
import { inCents } from "../../../calc/money";
import type { Read } from "../../fields/field";
import { JOB } from "../../fields/job";
import type { JOB_LINE } from "../../fields/jobline";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import type { Given } from "../given";
import { from, fromBoth, is, isKnown, type Known, readField } from "../known";
import { readStarted } from "../startvalues";
import { isOrdered } from "./agreed";
import type { CostAnswer } from "./cost";
import type { QuoteAnswer } from "./quote";

/** A cell each; undefined where the cell stays blank. */
export type JobLine = {
	[K in keyof typeof JOB_LINE]: Known<Read<typeof JOB_LINE>[K]>;
};

export function jobLine(
	basis: Basis,
	cure: CureAnswer,
	cost: CostAnswer,
	quote: QuoteAnswer,
): JobLine {
	const { job, units } = basis.given;
	const { days } = cure.calendar;
	const stage = readStarted(JOB, "stage", job, units);
	return {
		client: readField(JOB, "client", job, units),
		title: readField(JOB, "title", job, units),
		stage,
		pour: isKnown(days)
			? is(days.is.pour)
			: readField(JOB, "pourDate", job, units),
		due: dueOf(basis.given),
		price: cost.price,
		cost: cost.cost,
		margin: cost.margin,
		depositReceived: quote.paid.deposit,
		balanceReceived: quote.paid.balance,
		hours: cost.hours,
		demold: from(days, ({ demold }) => demold),
		fill: from(days, ({ fill }) => fill),
		polish: from(days, ({ polish }) => polish),
		seal: from(days, ({ seal }) => seal),
		deliver: from(days, ({ deliver }) => deliver),
		toPay: toPayOf(stage, quote),
	};
}

/** A job may be due on no day. */
function dueOf({ job, units }: Given): Known<string | undefined> {
	const due = readField(JOB, "dueDate", job, units);
	return "missing" in due ? is(undefined) : due;
}

const toPayOf = (
	stage: JobLine["stage"],
	{ total, paid }: QuoteAnswer,
): Known<number | undefined> =>
	isKnown(stage) && !isOrdered(stage.is)
		? is(undefined)
		: fromBoth(total, paid.total, (money, received) =>
				inCents(money - received),
			);
