/** What of a job goes into the Pour log: loads that are finished and not there yet, or there as they were before. */
import { LOGGED, type LoggedRow } from "../../fields/log";
import { isKnown, saying } from "../known";
import type { Whole } from "../whole";
import type { CardAnswer } from "./cardanswers";
import { isFinished, isWeighed, pourOf } from "./loadpour";
import { logRow } from "./logrow";

export interface ToRecord {
	load: number;
	/** The row as it is to be. */
	row?: LoggedRow;
	/** The row is there, and says something else. */
	isAgain?: true;
	/** Why it is left out. */
	left?: string;
}

/** None of a load whose row is as it is to be. */
export const toRecord = (
	whole: Whole,
	job: number,
	logged: readonly LoggedRow[],
): ToRecord[] =>
	whole.cards().flatMap((card) => {
		const was = logged.find(({ load }) => Number(load) === card.load);
		return loadToRecord(whole, card, job, was) ?? [];
	});

function loadToRecord(
	whole: Whole,
	card: CardAnswer,
	job: number,
	was: LoggedRow | undefined,
): ToRecord | undefined {
	const { load } = card;
	const pour = pourOf(whole.basis.given, load);
	const left = (why: string): ToRecord | undefined =>
		was ? undefined : { load, left: `Load ${load} ${why}` };
	if (!isWeighed(pour)) return left("has no weights yet");
	if (!isFinished(pour))
		return left(
			"is not finished: type yes beside Finished on the Pour card once it is",
		);
	const row = logRow(whole.basis, card, { job, cost: whole.cost().cost });
	if (!isKnown(row)) return left(`cannot be worked out yet. ${saying(row)}`);
	if (!was) return { load, row: row.is };
	const next = withOwn(was, row.is);
	return isSame(was, next) ? undefined : { load, row: next, isAgain: true };
}

/** What a person noted on the log itself stays, and so does what the load was to cost when it was recorded. */
const withOwn = (was: LoggedRow, now: LoggedRow): LoggedRow => ({
	...now,
	...Object.fromEntries(
		(["cost", "estimate"] as const).map((key) => [key, was[key] ?? now[key]]),
	),
	...Object.fromEntries(
		(["result", "remarks"] as const).map((key) => [key, now[key] ?? was[key]]),
	),
});

const isSame = (one: LoggedRow, other: LoggedRow): boolean =>
	(Object.keys(LOGGED) as (keyof LoggedRow)[]).every(
		(key) => String(one[key] ?? "").trim() === String(other[key] ?? "").trim(),
	);
