import type { PublishedFile } from "./published";

const mm = (points: readonly (readonly [number, number])[]) =>
	points.map(([x, y]) => [1000 * x, 1000 * y]);

export const published: PublishedFile = {
	source: "Examples of the shoelace formula: Wikipedia and Rosetta Code",
	locator: "Shoelace formula; Shoelace formula for polygonal area",
	status: "memory",
	cases: [
		{
			function: "POLYGON_AREA",
			args: [
				mm([
					[1, 6],
					[3, 1],
					[7, 2],
					[4, 4],
					[8, 5],
				]),
			],
			expected: 16.5,
			tolerance: 1e-9,
			locator: "Wikipedia, Shoelace formula",
		},
		{
			function: "POLYGON_AREA",
			args: [
				mm([
					[3, 4],
					[5, 11],
					[12, 8],
					[9, 5],
					[5, 6],
				]),
			],
			expected: 30,
			tolerance: 1e-9,
			locator: "Rosetta Code, Shoelace formula for polygonal area",
		},
	],
};
