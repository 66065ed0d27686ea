/** What the client has paid. */
import { inCents } from "../../../calc/money";
import { sum } from "../../../calc/sum";
import { PAYMENT } from "../../fields/cost";
import type { Given } from "../given";
import { all, from, type Known, look, readRow } from "../known";

export interface PaidAnswer {
	deposit: Known<number>;
	/** The balance, and what was paid for change orders. */
	balance: Known<number>;
	total: Known<number>;
}

export function paidAnswer({
	job,
	units,
}: Pick<Given, "job" | "units">): PaidAnswer {
	const payments = all(
		(job.payments ?? []).map((row, index) => {
			const read = readRow(PAYMENT, row, units);
			return "look" in read ? look(`payment ${index + 1}: ${read.look}`) : read;
		}),
	);
	const totalOf = (of: (isDeposit: boolean) => boolean): Known<number> =>
		from(payments, (rows) =>
			inCents(
				sum(
					rows
						.filter((row) => of(row.for === "deposit"))
						.map(({ amount = 0 }) => inCents(amount)),
				),
			),
		);
	return {
		deposit: totalOf((isDeposit) => isDeposit),
		balance: totalOf((isDeposit) => !isDeposit),
		total: totalOf(() => true),
	};
}
