/** The New job form alive: what is typed, what is wrong, what it takes, and having it written. */
import { useEffect, useMemo, useState } from "preact/hooks";
import type { PanelStart } from "../../sheets/messages";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import { useMarks } from "../use-marks";
import { draftForm, draftText } from "./draft";
import { figuresOf } from "./figures";
import { blankForm } from "./form";
import { jobInput } from "./job-input";
import { mistakesIn, sentencesOf } from "./mistakes";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { useDraft } from "./use-draft";
import { useWriting } from "./writing";

export interface NewJobProps {
	ask: Ask;
	start: PanelStart;
	readAgain(): void;
	/** What was kept of an unfinished form; `""` where there is none. */
	kept: string;
}

export function useNewJob({ ask, start, readAgain, kept }: NewJobProps) {
	const [before] = useState(() => draftForm(kept, start));
	const [form, edit] = useState(() => before ?? blankForm(start, start.units));
	const [again, setAgain] = useState(before !== undefined);
	const [open, setOpen] = useState(form.pieces[0]?.key);
	const [demo, setDemo] = useState(false);
	const { writing, write, reset } = useWriting();
	const written = writing.state === "made" && !demo;
	const unkept = useDraft(ask, written ? "" : draftText(form), kept);
	const mistakes = useMemo(() => mistakesIn(form, start), [form, start]);
	const figures = useMemo(
		() => figuresOf(form, mistakes, start),
		[form, mistakes, start],
	);
	const sentences = useMemo(() => sentencesOf(mistakes), [mistakes]);
	const marks = useMarks(sentences);
	useEffect(() => {
		if (start.unitsFixed) edit((before) => ({ ...before, units: start.units }));
	}, [start]);

	/** Opens what is folded up around the first mistake and goes there. */
	const showMistake = () => {
		const [id = ""] = sentences.keys();
		marks.showAll();
		const piece = form.pieces.find(({ key }) =>
			id.startsWith(fieldId(key, "")),
		);
		if (piece) setOpen(piece.key);
		focusSoon(id);
	};
	const writeJob = () => {
		if (sentences.size > 0) return showMistake();
		setDemo(false);
		write(() => ask("createJob", jobInput(form)));
	};
	const writeDemo = () => {
		setDemo(true);
		write(() => ask("createDemoJob", form.units));
	};
	const startOver = () => {
		const blank = blankForm(start, form.units);
		edit(blank);
		setOpen(blank.pieces[0]?.key);
		marks.clear();
		setAgain(false);
	};
	const goOn = () => {
		if (!demo) startOver();
		readAgain();
		reset();
		focusSoon("client");
	};
	const section: SectionProps = { form, start, figures, edit };
	return {
		section,
		marks,
		sentences,
		showMistake,
		pieces: { open, setOpen },
		writing,
		demo,
		writeJob,
		writeDemo,
		goOn,
		/** Whether the form is one that was kept. */
		again,
		startOver,
		unkept,
	};
}
