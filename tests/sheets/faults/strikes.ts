/** Strikes: an entry point fails at one of its service calls, at each of them in turn. */
import { expect } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook } from "../workbook";

interface Work {
	before: SavedWorkbook;
	name: string;
	args: readonly unknown[];
}

export interface Struck {
	/** How many service calls there are, each struck once. */
	calls: number;
	/** How many strikes the work got over, and was done all the same. */
	done: number;
}

const reopened = ({ before }: Work): Promise<Desk> =>
	openWorkbook({ saved: before, quick: true });

/**
 * Strikes at every service call. After each the workbook is as it was, to the last format and name; or else the work is
 * done, and the workbook is as without a strike. Never between.
 *
 * A workbook that was proven to be as before is struck again as it stands.
 */
export async function struckAtEach(work: Work): Promise<Struck> {
	const { after, calls } = await unstruck(work);
	let desk = await reopened(work);
	let done = 0;
	for (let call = 1; call <= calls; call++) {
		const error = await struck(desk, work, call);
		if (error && desk.differsFrom(work.before) === undefined) continue;
		if (error) expectTakenBack(desk, work, `call ${call}: ${error}`);
		desk.dispose();
		if (!error) {
			await expectDone(work, call, after);
			done += 1;
		}
		desk = await reopened(work);
	}
	desk.dispose();
	return { calls, done };
}

/** A formula that was put back shows nothing until it is calculated. */
function expectTakenBack(desk: Desk, { before, name }: Work, where: string) {
	const found = desk.differsFrom(before, { butShown: true });
	expect(found, `${name}, struck at ${where}`).toBeUndefined();
}

/** What the work leaves, what formulas show not yet calculated. */
async function unstruck(work: Work) {
	const desk = await reopened(work);
	await desk.call(work.name, work.args, { quick: true });
	const after = desk.save();
	const calls = desk.counts().services;
	desk.dispose();
	return { after, calls };
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

/** A workbook with the studio and the demo job in it. */
export async function studioWithJob(): Promise<SavedWorkbook> {
	const desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
	const saved = desk.save();
	desk.dispose();
	return saved;
}
