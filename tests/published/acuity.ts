import type { PublishedFile } from "./published";

/** What 1 arcminute is at a distance, mm, to 0.0001: bands of 0.0002 more need one fold, of 0.0002 less none. */
const ARCMINUTES: readonly (readonly [distance: number, width: number])[] = [
	[300, 0.0873],
	[500, 0.1454],
	[1000, 0.2909],
	[2000, 0.5818],
];

export const published: PublishedFile = {
	source: "Visual acuity 1.0 is 1 arcminute",
	locator: "definition of decimal acuity; widths by d tan(1/60°)",
	status: "memory",
	cases: [
		...ARCMINUTES.flatMap(([distance, width]) => [
			{
				function: "FOLDS_UNTIL_BLURRED",
				args: [width + 0.0002, distance],
				expected: 1,
				tolerance: 0,
			},
			{
				function: "FOLDS_UNTIL_BLURRED",
				args: [width - 0.0002, distance],
				expected: 0,
				tolerance: 0,
			},
		]),
		{
			function: "FOLDS_UNTIL_BLURRED",
			args: [40, 500],
			expected: 9,
			tolerance: 0,
			note: "40 mm seen from 0.5 m reaches 1 arcminute after 8.103 folds",
		},
	],
};
