/** The measured sample alive: what is typed, what is wrong, and having it added. */
import { useMemo, useState } from "preact/hooks";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import { useDoing } from "../use-doing";
import { useMarks } from "../use-marks";
import {
	blankSample,
	type Sample,
	sampleMistakes,
	swatchInput,
} from "./sample";

export function useSample(ask: Ask, mix: string) {
	const [sample, setSample] = useState<Sample>(() => blankSample(mix));
	const adding = useDoing();
	const mistakes = useMemo(() => sampleMistakes(sample), [sample]);
	const marks = useMarks(mistakes);
	const added = (row: number): string => {
		setSample({ ...sample, color: "", remark: "" });
		marks.clear();
		return `It is in row ${row} of Swatches.`;
	};
	const add = () => {
		if (mistakes.size === 0)
			return void adding.run(
				() => ask("recordSwatch", swatchInput(sample)),
				added,
				"Look at Swatches before adding it again.",
			);
		marks.showAll();
		focusSoon([...mistakes.keys()][0] ?? "");
	};
	return { sample, setSample, marks, mistakes, adding, add };
}
