import type { PublishedCase, PublishedFile } from "./published";

/** Days, then the share for rapid (s 0.20), normal (0.25) and slow cement (0.38). */
const SHARES = [
	[1, 0.424, 0.342, 0.196],
	[3, 0.663, 0.598, 0.458],
	[7, 0.819, 0.779, 0.684],
	[14, 0.92, 0.902, 0.854],
	[28, 1, 1, 1],
	[91, 1.093, 1.118, 1.184],
	[365, 1.156, 1.198, 1.316],
] as const;

const strength = (
	days: number,
	cement: string,
	share: number,
): PublishedCase => ({
	function: "STRENGTH_AT_AGE",
	args: [days, cement],
	expected: share,
	tolerance: 0.0005,
});

/** Days back from the rounded share, where that still tells days apart. */
const age = (days: number, share: number): PublishedCase => ({
	function: "AGE_FOR_STRENGTH",
	args: [share, "normal"],
	expected: days,
	tolerance: { rel: 0.01 },
	note: "the share's half digit, 0.0005, is worth up to 0.6% of the days at 14 days",
});

export const published: PublishedFile = {
	source: "EN 1992-1-1:2004, eq. 3.2, s of 3.1.2(6)",
	locator:
		"s seen quoted on acrylatex.com; the shares are worked from the formula, no printed table was found",
	status: "memory",
	cases: [
		...SHARES.flatMap(([days, rapid, normal, slow]) => [
			strength(days, "rapid", rapid),
			strength(days, "normal", normal),
			strength(days, "slow", slow),
		]),
		age(3, 0.598),
		age(7, 0.779),
		age(14, 0.902),
		age(28, 1),
	],
};
