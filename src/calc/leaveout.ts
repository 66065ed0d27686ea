/** How well swatches agree: each against the fit through the others. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import { mixedColor } from "./kubelka";
import { fitted, shareOfRange } from "./swatches";
import { alone, meanColor, type SwatchRow } from "./tonecolor";

/**
 * CIEDE2000 between each swatch and what the others say of its dose; undefined where they say nothing.
 *
 * An undosed one is compared with the other undosed ones. One of a single pigment is compared with the fit without all
 * swatches of its dose, which needs two other doses besides the undosed one. One of several pigments is left out of every
 * fit: the recipe it would be is compared by the recipe's own search.
 */
export function leftOutDifferences(
	rows: readonly SwatchRow[],
): (number | undefined)[] {
	const known = new Map<string, Lab | undefined>();
	return rows.map((row, i) => {
		const used = row.doses.flatMap((dose, column) =>
			dose > 0 ? [column] : [],
		);
		const [column = -1] = used;
		if (used.length > 1) return undefined;
		if (column < 0) {
			const others = rows.filter(
				(other, k) => k !== i && other.doses.every((dose) => dose === 0),
			);
			if (others.length === 0) return undefined;
			return colorDifference(meanColor(others), row.lab);
		}
		const dose = row.doses[column] ?? 0;
		const key = `${column} ${dose}`;
		if (!known.has(key)) known.set(key, saidByOthers(rows, column, dose));
		const said = known.get(key);
		return said && colorDifference(said, row.lab);
	});
}

/** The color of a dose by the swatches of other doses; the strongest is drawn on from below it. */
function saidByOthers(
	rows: readonly SwatchRow[],
	column: number,
	dose: number,
): Lab | undefined {
	const others = alone(rows, column).filter((swatch) => swatch.dose !== dose);
	if (others.length < 3 || others[0]?.dose !== 0) return undefined;
	const fit = fitted(others);
	return mixedColor(fit.base, [
		{ strengths: fit.strengths, u: shareOfRange(fit, dose) },
	]);
}

export interface PigmentAgreement {
	column: number;
	/** Mean of its swatches' differences; undefined where none can be left out. */
	mean: number | undefined;
	/** The row that the others agree without, and by how much it is off. */
	odd: { row: number; difference: number } | undefined;
}

/** A swatch that is this far off, and twice as far as the next, disagrees: common practice, no source. */
const ODD = 2.5;

/** Of each pigment that has swatches of its own. */
export function agreements(rows: readonly SwatchRow[]): PigmentAgreement[] {
	const differences = leftOutDifferences(rows);
	const columns = rows[0]?.doses.map((_, column) => column) ?? [];
	return columns.flatMap((column): PigmentAgreement[] => {
		const own = rows.flatMap(({ doses }, row) =>
			doses.every((dose, i) => dose > 0 === (i === column)) ? [row] : [],
		);
		if (own.length === 0) return [];
		const known = own.flatMap((row) => {
			const difference = differences[row];
			return difference === undefined ? [] : [{ row, difference }];
		});
		return [
			{
				column,
				mean:
					known.length > 0
						? known.reduce((sum, each) => sum + each.difference, 0) /
							known.length
						: undefined,
				odd: oddOf(rows, known),
			},
		];
	});
}

/** The row without which the others agree best, if it is far off them and they agree by far better. */
function oddOf(
	rows: readonly SwatchRow[],
	known: readonly { row: number; difference: number }[],
): PigmentAgreement["odd"] {
	const restOf = (row: number): number => {
		const without = leftOutDifferences(rows.filter((_, i) => i !== row));
		const rest = known
			.filter((each) => each.row !== row)
			.flatMap(
				(each) => without[each.row > row ? each.row - 1 : each.row] ?? [],
			);
		return rest.length > 0 ? Math.max(...rest) : Number.POSITIVE_INFINITY;
	};
	const [best] = known
		.filter(({ difference }) => difference > ODD)
		.map((each) => ({ ...each, rest: restOf(each.row) }))
		.sort((a, b) => a.rest - b.rest);
	return best && best.rest < best.difference / 2
		? { row: best.row, difference: best.difference }
		: undefined;
}
