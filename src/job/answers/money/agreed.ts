/** What the client agreed to, and whether it is kept. */
import { JOB } from "../../fields/job";
import { isBlank } from "../../reading/cells";
import type { Given } from "../given";
import {
	flat,
	fromBoth,
	is,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import { readStarted } from "../startvalues";
import type { AgreedChange } from "./changeorders";

/** Whether a price is agreed, which later changes leave as it is. */
export const isAgreed = ({ job }: Pick<Given, "job">): boolean =>
	!isBlank(job.priceAgreed);

/** Nothing is owed for a job that nobody ordered yet, and its hours are not booked. */
export const isOrdered = (stage: unknown): boolean =>
	stage !== "sampling" && stage !== "priced";

/** What was ordered without a price that is kept, and what is both a piece and a change order. */
export const agreedCheck = (
	given: Given,
	changes: Known<readonly AgreedChange[]>,
): Said =>
	saidOf(
		flat(
			fromBoth(
				readStarted(JOB, "stage", given.job, given.units),
				changes,
				(stage, each): Known<string> => {
					const isSold = isOrdered(stage) || !isBlank(given.job.acceptedOn);
					if (isSold && !isAgreed(given))
						return look(
							"type the price agreed on the Quote: until then the price of what was ordered moves with its cost",
						);
					const twice = each.flatMap(({ what }) => pieceOf(given, what))[0];
					return twice
						? look(
								`${twice} is a piece of this job, and a change order too: its cost is counted twice, and its price where none is agreed. Take it out of the pieces, or take out the change order`,
							)
						: is("fine");
				},
			),
		),
	);

/** Words beside a name that say only that there is one more of it. */
const MORE =
	/^(a|an|the|and|plus|x|×|\d+|one|two|three|second|third|more|another|extra|further|additional|add|added|adding|new)$/;

/** What a change order or a piece is, without what is said of it: `Two more shelves, 900 mm` is `shelves`. */
const thing = (text: string): string =>
	(
		text
			.toLowerCase()
			.split(/[,;:(–—]| (?:for|in|of|to|at|on|with|from) /)[0] ?? ""
	)
		.split(/[\s+]+/)
		.filter((word) => word !== "" && !MORE.test(word))
		.map((word) => word.replace(/ves$/, "f").replace(/([^s])s$/, "$1"))
		.join(" ");

/** The piece that a change order adds, by its name. */
const pieceOf = ({ job }: Given, what: string): string[] =>
	job.pieces
		.map(({ name }) => String(name ?? "").trim())
		.filter((name) => thing(name) !== "" && thing(name) === thing(what));
