import { milliseconds, ms, numbers, type Row, times } from "./row";
import { built, compiled, distCode, loaded } from "./script";

const DOSES = [[0], [0.01], [0.02], [0.04], [0.06]];
const COLORS = [
	["80, 1, 8"],
	["66, 3, 14"],
	["58, 4, 17"],
	["48, 5, 19"],
	["42, 5.4, 20"],
];

/** For a thousand rows. */
const LIMIT_MS = 1000;

export const colorRows = (): Row[] => [...doseRows(), ...recipeRows()];

/** Of one call of PIGMENTS_FOR_COLOR, at the median and the first time. */
const RECIPE_LIMIT_MS = 50;
const COLD_LIMIT_MS = 150;

/** PIGMENTS_FOR_COLOR of any colors out of 40 swatches of five pigments, invented. */
function recipeRows(): Row[] {
	const toward = [
		[48, 26, 16],
		[66, 9, 38],
		[34, 0, -2],
		[52, -14, 12],
		[45, 12, 18],
	];
	const swatches = toward.flatMap((strong, pigment) =>
		Array.from({ length: 8 }, (_, k) => ({
			doses: toward.map((_, i) => (i === pigment ? 0.007 * k : 0)),
			// A curve that flattens, from the undosed 78, 1, 8.
			lab: [78, 1, 8].map(
				(from, i) => from + ((strong[i] ?? 0) - from) * ((k * 1.5) / (k + 3.5)),
			),
		})),
	);
	const next = numbers(5);
	const args = Array.from({ length: 41 }, () => [
		`${35 + 45 * next()}, ${-8 + 30 * next()}, ${-5 + 40 * next()}`,
		swatches.map(({ doses }) => doses),
		swatches.map(({ lab }) => [lab.join(", ")]),
	]);
	const script = compiled(distCode());
	const cold = milliseconds(
		() => loaded(script)("PIGMENTS_FOR_COLOR", args[0] ?? []),
		1,
	);
	const call = built();
	const all = args
		.map((each) => milliseconds(() => call("PIGMENTS_FOR_COLOR", each), 1))
		.sort((a, b) => a - b);
	const at = (share: number) => all[Math.round(share * 40)] ?? Number.NaN;
	const what = "PIGMENTS_FOR_COLOR, 5 pigments, 40 swatches";
	return [
		{
			what: `${what}, median`,
			figure: ms(at(0.5)),
			beside: `${times(at(0.5), RECIPE_LIMIT_MS)} its limit of ${RECIPE_LIMIT_MS} ms; 90%: ${ms(at(0.9))}`,
		},
		{
			what: `${what}, first call`,
			figure: ms(cold),
			beside: `${times(cold, COLD_LIMIT_MS)} its limit of ${COLD_LIMIT_MS} ms`,
		},
	];
}

/** DOSE_FOR_COLOR as rows are added: a column shares the fits of its swatches. */
function doseRows(): Row[] {
	const call = built();
	const took = (rows: number): number => {
		const wanted = Array.from({ length: rows }, (_, i) => [
			`${45 + (30 * i) / rows}, 4, 15`,
		]);
		const args = [DOSES, COLORS, wanted];
		return milliseconds(() => call("DOSE_FOR_COLOR", args), 3);
	};
	took(1);
	const counts = [1, 100, 1000];
	const all = counts.map(took);
	return counts.map((count, i) => ({
		what: `DOSE_FOR_COLOR, rows: ${count}`,
		figure: ms(all[i] ?? Number.NaN),
		beside: `${times(all[i] ?? Number.NaN, all[0] ?? Number.NaN)} 1 row, ${times(count, 1)} as many; ${times(all[i] ?? Number.NaN, LIMIT_MS)} the limit of a second`,
	}));
}
