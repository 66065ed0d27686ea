/** An answer computed from the regions that it asks for is the answer from all that was typed. */
import { expect, test } from "vitest";
import { tabAnswers } from "../../../src/job/tabs";
import { tabCells, tabInput } from "../../../src/job/tabs/tab";
import { answerOf, demoJob, jobRegions } from "./typedcells";

test.each(
	(["metric", "us"] as const).flatMap((units) =>
		tabAnswers.map((answer) => ({ name: answer.name, units, answer })),
	),
)("$name in $units", ({ units, answer }) => {
	const regions = jobRegions({
		...demoJob(units),
		quotedOn: "2027-01-20",
		priceAgreed: 4321,
		payments: [{ for: "deposit", amount: 1000 }],
		moistureLimit: 3,
		moistureReading: 4,
		goods: [{ what: "Sealant", unit: "tube", quantity: 4 }],
	});
	expect(answerOf(answer, regions)).toEqual(
		tabCells(answer, tabInput(regions)),
	);
});
