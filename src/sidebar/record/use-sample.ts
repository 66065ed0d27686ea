/** The measured sample alive: what is typed, what is wrong, and having it added. */
import { useMemo, useState } from "preact/hooks";
import { failureOf } from "../failure";
import type { Marks } from "../field";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import {
	blankSample,
	type Sample,
	sampleMistakes,
	swatchInput,
} from "./sample";

type Told = { kind: "plain" | "warning"; text: string };

export function useSample(ask: Ask, mix: string) {
	const [sample, setSample] = useState<Sample>(() => blankSample(mix));
	const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
	const [all, setAll] = useState(false);
	const [told, setTold] = useState<Told>();
	const [busy, setBusy] = useState(false);
	const mistakes = useMemo(() => sampleMistakes(sample), [sample]);
	const marks: Marks = {
		at: (id) => (all || left.has(id) ? mistakes.get(id) : undefined),
		left: (id) => setLeft((before) => new Set([...before, id])),
	};
	const added = (row: number): Told => {
		setSample({ ...sample, color: "", remark: "" });
		setAll(false);
		setLeft(new Set());
		return { kind: "plain", text: `It is in row ${row} of Swatches.` };
	};
	const add = () => {
		setTold(undefined);
		if (mistakes.size > 0) {
			setAll(true);
			focusSoon([...mistakes.keys()][0] ?? "");
		} else if (!busy) {
			setBusy(true);
			ask("recordSwatch", swatchInput(sample))
				.then(added, notAdded)
				.then(setTold)
				.then(() => setBusy(false));
		}
	};
	return { sample, setSample, marks, mistakes, told, busy, add };
}

function notAdded(error: unknown): Told {
	const { text, outcome } = failureOf(error);
	const look = " Look at Swatches before adding it again.";
	return {
		kind: "warning",
		text: outcome === "unknown" ? text + look : text,
	};
}
