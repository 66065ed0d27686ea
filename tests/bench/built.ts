import { join } from "node:path";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { cellOf, type Place } from "../job/found";
import { codeLines } from "./lines";
import { RELEASE } from "./release";
import { answerTime, customNames, roundsOf } from "./rounds";
import type { Row } from "./row";

const DIST = join(import.meta.dirname, "../../dist");

/** Live jobs of a busy studio. */
const JOBS = 15;

/** Service calls that a job after the first may take. */
const NEXT_LIMIT = 250;

const before = (figure: string | number) => `0.1.0: ${figure}`;

/** Until a real sheet has answered a cell that was typed anew, by the rounds that it takes. */
function answeredRow(
	desk: Desk,
	what: string,
	[tab, range]: Place,
	then = "",
): Row {
	const { calls, rounds, seconds } = answerTime(desk, customNames, {
		tab,
		range,
	});
	return {
		what: `${what}, at 0.8 s a round`,
		figure: `${seconds.toFixed(1)} s`,
		beside: `${calls} custom calls in ${rounds} rounds${then}`,
	};
}

const LENGTH = cellOf("Job.pieces", 0, 3);
const SETTING = cellOf("Studio.reserve");

/** How the workbook is built, beside how that of 0.1.0 was. */
export async function builtRows(): Promise<Row[]> {
	const desk = await openHeadlessDesk(DIST, { enabled: true });
	try {
		await desk.call("createDemoJob", ["metric"]);
		const all = roundsOf(desk, customNames);
		const job = roundsOf(desk, customNames, (tab) => tab.startsWith("1 "));
		const one = answeredRow(
			desk,
			"One length changed, 1 live job",
			LENGTH,
			`; ${before(`${RELEASE.rounds} rounds, ${RELEASE.seconds} s`)}`,
		);
		await desk.call("createDemoJob", ["metric"]);
		const second = desk.counts().services;
		for (let made = 2; made < JOBS; made++) await desk.call("copyJob", [1]);
		const live = desk.tabs().filter((tab) => / Pour card$/.test(tab)).length;
		const many = (what: string, place: Place) =>
			answeredRow(desk, `${what}, ${live} live jobs`, place);
		return [
			{
				what: "Demo workbook, custom calls",
				figure: String(all.calls),
				beside: `${job.calls} of them the job's, limit 20; ${before(RELEASE.calls)}`,
			},
			{
				what: "Demo workbook, custom calls that wait for each other",
				figure: String(all.depth),
				beside: `${job.depth} on the job's tabs, limit 1; ${before(RELEASE.depth)}`,
			},
			{
				what: "Demo workbook, formulas",
				figure: String(all.formulas),
				beside: before(RELEASE.formulas),
			},
			{
				what: "Demo workbook, longest formula",
				figure: String(all.longest),
				beside: `limit 200, ${all.long} over it; ${before(`${RELEASE.longest}, ${RELEASE.long} over`)}`,
			},
			one,
			many("One length changed", LENGTH),
			many("A studio's setting changed", SETTING),
			{
				what: "Second job, service calls",
				figure: String(second),
				beside: `limit ${NEXT_LIMIT}`,
			},
			{
				what: "Lines of src without the local workbook, and of templates",
				figure: String(codeLines()),
				beside: before(RELEASE.lines),
			},
		];
	} finally {
		desk.dispose();
	}
}
