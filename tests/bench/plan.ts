import { milliseconds, ms, numbers, type Row, times } from "./row";
import { built } from "./script";

const PIGMENTS = ["black", "red", "yellow"];

/** Tones with doses of three pigments, most of which cannot be dosed in one vessel. */
function tones(count: number): unknown[][] {
	const next = numbers(count);
	return Array.from({ length: count }, (_, i) => [
		`tone ${i + 1}`,
		1 + next(),
		...PIGMENTS.map(() => 0.05 * next()),
	]);
}

/** PULL_OFF_PLAN as tones are added. */
export function planRows(): Row[] {
	const call = built();
	const took = (count: number): number =>
		milliseconds(() =>
			call("PULL_OFF_PLAN", [tones(count), [PIGMENTS], 100, 0.5]),
		);
	const counts = [2, 4, 6, 8, 10, 12];
	took(12);
	const all = counts.map(took);
	return counts.map((count, i) => ({
		what: `PULL_OFF_PLAN, ${count} tones`,
		figure: ms(all[i] ?? Number.NaN),
		beside: `${times(all[i] ?? Number.NaN, all[0] ?? Number.NaN)} 2 tones, ${times(count, 2)} as many`,
	}));
}
