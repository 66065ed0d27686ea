/** Strikes: an entry point fails at one of its service calls. */
import { expect } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import type { HeadlessOptions } from "../../../src/desk/headless";
import { openWorkbook } from "../workbook";

export interface Work {
	before: SavedWorkbook;
	name: string;
	args: readonly unknown[];
	/** Opens a workbook; default one of the built add-on. */
	open?: (options: HeadlessOptions) => Promise<Desk>;
}

export interface Struck {
	/** How many service calls there are. */
	calls: number;
	/** How many of them were struck. */
	strikes: number;
	/** How many strikes the work got over, and was done all the same. */
	done: number;
}

export const reopened = ({ before, open = openWorkbook }: Work) =>
	open({ saved: before, quick: true });

/** The service calls of the work in order, and what it leaves, what formulas show not yet calculated. */
export async function unstruck(work: Work) {
	const desk = await reopened(work);
	await desk.call(work.name, work.args, { quick: true });
	const after = desk.save();
	const { order } = desk.counts();
	desk.dispose();
	return { after, order };
}

/** Which calls to strike, counted from 1. */
export type Chosen = (order: readonly string[]) => number[];

export const everyCall: Chosen = (order) => order.map((_, index) => index + 1);

/** Of each method the last call. */
export const eachLast: Chosen = (order) =>
	everyCall(order).filter(
		(call) => order.lastIndexOf(order[call - 1] ?? "") === call - 1,
	);

/** Of each method the first and the last call. */
export const eachKind: Chosen = (order) =>
	everyCall(order).filter((call) =>
		[order.indexOf, order.lastIndexOf].some(
			(find) => find.call(order, order[call - 1] ?? "") === call - 1,
		),
	);

/**
 * Strikes at each of the chosen calls. After each the workbook is as it was, to the last format and name; or else the
 * work is done, and the workbook is as without a strike. Never between.
 *
 * A workbook that was proven to be as before is struck again as it stands.
 */
export async function struckAt(work: Work, chosen: Chosen): Promise<Struck> {
	const { after, order } = await unstruck(work);
	const calls = chosen(order);
	let desk = await reopened(work);
	let done = 0;
	for (const call of calls) {
		const error = await struck(desk, work, call);
		if (error && desk.differsFrom(work.before) === undefined) continue;
		const where = `call ${call}, ${order[call - 1]}`;
		if (error) expectTakenBack(desk, work, `${where}: ${error}`);
		desk.dispose();
		if (!error) {
			await expectDone(work, call, after);
			done += 1;
		}
		desk = await reopened(work);
	}
	desk.dispose();
	const struckOnes = { calls: order.length, strikes: calls.length, done };
	console.log(`${work.name}: ${JSON.stringify(struckOnes)}`);
	return struckOnes;
}

/** A formula that was put back shows nothing until it is calculated. */
function expectTakenBack(desk: Desk, { before, name }: Work, where: string) {
	const found = desk.differsFrom(before, { butShown: true });
	expect(found, `${name}, struck at ${where}`).toBeUndefined();
}

/** What the person is told; undefined where the work was done all the same. */
const struck = (desk: Desk, { name, args }: Work, failAt: number) =>
	desk.call(name, args, { failAt, quick: true }).then(
		() => undefined,
		(error: Error) => error.message,
	);

/** Does it again in a workbook never struck: in another the new tabs would have other numbers. */
async function expectDone(
	work: Work,
	call: number,
	after: SavedWorkbook,
): Promise<void> {
	const desk = await reopened(work);
	const where = `${work.name}, struck at call ${call}, done`;
	expect(await struck(desk, work, call), where).toBeUndefined();
	expect(desk.differsFrom(after), where).toBeUndefined();
	desk.dispose();
}
