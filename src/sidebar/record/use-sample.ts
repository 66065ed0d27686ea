/** The measured sample alive: what is typed, what is wrong, and having it added. */
import { useMemo, useState } from "preact/hooks";
import type { Marks } from "../field";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import { useDoing } from "../use-doing";
import {
	blankSample,
	type Sample,
	sampleMistakes,
	swatchInput,
} from "./sample";

export function useSample(ask: Ask, mix: string) {
	const [sample, setSample] = useState<Sample>(() => blankSample(mix));
	const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
	const [all, setAll] = useState(false);
	const adding = useDoing();
	const mistakes = useMemo(() => sampleMistakes(sample), [sample]);
	const marks: Marks = {
		at: (id) => (all || left.has(id) ? mistakes.get(id) : undefined),
		left: (id) => setLeft((before) => new Set([...before, id])),
	};
	const added = (row: number): string => {
		setSample({ ...sample, color: "", remark: "" });
		setAll(false);
		setLeft(new Set());
		return `It is in row ${row} of Swatches.`;
	};
	const add = () => {
		if (mistakes.size === 0)
			return void adding.run(
				() => ask("recordSwatch", swatchInput(sample)),
				added,
				"Look at Swatches before adding it again.",
			);
		setAll(true);
		focusSoon([...mistakes.keys()][0] ?? "");
	};
	return { sample, setSample, marks, mistakes, adding, add };
}
