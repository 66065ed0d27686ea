/** What is still open of a job, so that it is not closed by mistake. */
import { isFinished, pourOf } from "./card/loadpour";
import { isKnown, saying } from "./known";
import { loadsOf } from "./loads";
import { isOrdered } from "./money/agreed";
import type { Whole } from "./whole";

/** A sentence each; none where every load is in the Pour log and nothing is owed. */
export const openWork = (
	whole: Whole,
	recorded: readonly number[],
): string[] => [...openLoads(whole, recorded), ...openMoney(whole)];

function openLoads(
	{ basis: { loads, given } }: Whole,
	recorded: readonly number[],
): string[] {
	const all = loadsOf(loads);
	if (!isKnown(all)) return [`Its loads: ${saying(all)}`];
	const numbers = all.is.map(({ number }) => number);
	const isDone = (load: number) => isFinished(pourOf(given, load));
	return [
		...said(
			numbers.filter((load) => !isDone(load)),
			"not poured",
		),
		...said(
			numbers.filter((load) => isDone(load) && !recorded.includes(load)),
			"not in the Pour log",
		),
	];
}

const said = (loads: readonly number[], how: string): string[] =>
	loads.length === 0
		? []
		: [
				loads.length === 1
					? `Load ${loads[0]} is ${how}`
					: `Loads ${loads.join(", ")} are ${how}`,
			];

function openMoney(whole: Whole): string[] {
	const { toPay, paid, open } = whole.quote();
	const { stage } = whole.line();
	const isOwed =
		!(isKnown(stage) && !isOrdered(stage.is)) ||
		!(isKnown(paid.total) && paid.total.is === 0);
	if (!isOwed || (isKnown(toPay) && toPay.is === 0)) return [];
	return [
		open.state === "fine"
			? `Still to be paid: ${open.say}`
			: open.say.replace(/^Look: /, "Payments: "),
	];
}
