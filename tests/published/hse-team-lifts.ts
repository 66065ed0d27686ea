import type { PublishedCase, PublishedFile } from "./published";

const lift = (
	weight: number,
	limit: number,
	people: number | string,
	note: string,
): PublishedCase => ({
	function: "PEOPLE_TO_LIFT",
	args: [weight, limit],
	expected: people,
	tolerance: 0,
	note,
});

export const published: PublishedFile = {
	source: "HSE, Manual handling (L23): team handling",
	locator:
		"rule quoted on reachback.builtintelligence.com/t/1478; numbers of safety.networkrail.co.uk and firstsafetytrainingservices.co.uk",
	status: "confirmed",
	cases: [
		lift(20, 20, 1, "one may lift 20 kg"),
		lift(26.6, 20, 2, "Network Rail: two not above about 26.6 kg"),
		lift(27, 20, 3, "above 26.6 kg two are not enough"),
		lift(66, 50, 2, "First Safety: two of 50 kg each lift 66 kg"),
		lift(75, 50, 3, "First Safety: three of 50 kg each lift 75 kg"),
		lift(76, 50, "lifting equipment", "above what three lift"),
	],
};
