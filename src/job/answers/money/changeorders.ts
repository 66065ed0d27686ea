/** What the client asked for afterwards; only what is agreed is sold. */
import { inCents } from "../../../calc/money";
import { sum } from "../../../calc/sum";
import { CHANGE } from "../../fields/cost";
import { isBlank } from "../../reading/cells";
import type { Given } from "../given";
import { all, from, type Known, look, readRow } from "../known";

export interface AgreedChange {
	what: string;
	/** Below 0 it is a credit. */
	price: number;
	cost: number;
}

/** Those with a day on which they were agreed. */
export const agreedChanges = ({
	job,
	units,
}: Given): Known<readonly AgreedChange[]> =>
	from(
		all(
			(job.changes ?? []).map((row, index) => {
				const read = readRow(CHANGE, row, units);
				return "look" in read
					? look(`change order ${index + 1}: ${read.look}`)
					: read;
			}),
		),
		(rows) =>
			rows
				.filter(({ agreedOn }) => !isBlank(agreedOn))
				.map(({ what = "", price = 0, cost = 0 }) => ({
					what,
					price: inCents(price),
					cost,
				})),
	);

export const priceOfChanges = (
	changes: Known<readonly AgreedChange[]>,
): Known<number> =>
	from(changes, (each) => sum(each.map(({ price }) => price)));

export const costOfChanges = (
	changes: Known<readonly AgreedChange[]>,
): Known<number> => from(changes, (each) => sum(each.map(({ cost }) => cost)));
