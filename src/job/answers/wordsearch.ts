/** Rows in which all words that are looked for stand, in any order. */

/** Rows that are shown of those that are found. */
export const MOST_FOUND = 12;

const wordsOf = (looked: string): string[] =>
	looked.toLowerCase().split(/\s+/).filter(Boolean);

/** The rows that are found, in their order; none while nothing is looked for. */
export function foundRows<R>(
	looked: string,
	rows: readonly R[],
	textsOf: (row: R) => readonly unknown[],
): R[] {
	const words = wordsOf(looked);
	if (words.length === 0) return [];
	return rows.filter((row) => {
		const text = textsOf(row)
			.map((part) => String(part ?? ""))
			.join("\n")
			.toLowerCase();
		return words.every((word) => text.includes(word));
	});
}
