import { milliseconds, ms, type Row, times } from "./row";
import { built } from "./script";

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

/** DOSE_FOR_COLOR as rows are added: a column shares the fits of its swatches. */
export function colorRows(): Row[] {
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
