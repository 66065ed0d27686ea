/** When a mistake is shown: at a field that was left, and everywhere once it was all to be written. */
import { useMemo, useState } from "preact/hooks";
import type { Marks } from "./mistake";

export interface MarksShown extends Marks {
	showAll(): void;
	/** Nothing is shown until it is left again. */
	clear(): void;
	leftAll(ids: readonly string[]): void;
}

/** The sentence of a row as a whole is shown as soon as its fields are fine. */
export function useMarks(sentences: ReadonlyMap<string, string>): MarksShown {
	const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
	const [all, setAll] = useState(false);
	return useMemo(() => {
		const leftAll = (ids: readonly string[]) =>
			setLeft((before) => new Set([...before, ...ids]));
		return {
			at: (id) =>
				all || left.has(id) || id.endsWith("-row")
					? sentences.get(id)
					: undefined,
			left: (id) => leftAll([id]),
			leftAll,
			showAll: () => setAll(true),
			clear: () => {
				setAll(false);
				setLeft(new Set());
			},
		};
	}, [sentences, left, all]);
}
