/** The unfinished form, kept with the script as a text: another dialog over the panel takes the page away. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { PanelStart } from "../../sheets/messages";
import { failureOf } from "../failure";
import type { Ask } from "../script";
import {
	blankCutout,
	blankForm,
	blankPiece,
	blankTone,
	type JobForm,
	pieceIsBlank,
} from "./form";

/** Forms of another build of the panel are not read. */
const BUILD = 2;

/** `""` for a form that nobody has begun. */
export const draftText = (form: JobForm): string =>
	isBegun(form) ? JSON.stringify({ build: BUILD, form }) : "";

const isBegun = (form: JobForm): boolean =>
	[form.client, form.title, form.pourDate].some((typed) => typed !== "") ||
	form.pieces.some((row) => !pieceIsBlank(row)) ||
	form.pigments.length > 0 ||
	form.tones.some(({ name }) => name !== "");

/** The form that was kept, in this workbook's units; undefined where there is none. */
export function draftForm(
	text: string,
	start: PanelStart,
): JobForm | undefined {
	if (text === "") return undefined;
	try {
		const { build, form } = JSON.parse(text) as {
			build: number;
			form: JobForm;
		};
		return build === BUILD ? withOwnKeys(form, start) : undefined;
	} catch {
		return undefined;
	}
}

/** Rows get keys of this page: those of the page that kept them may be taken here. */
const withOwnKeys = (form: JobForm, start: PanelStart): JobForm => ({
	...blankForm(start.studio, start.units),
	...form,
	units: start.unitsFixed ? start.units : form.units,
	pieces: form.pieces.map((row) => ({ ...row, key: blankPiece().key })),
	cutouts: form.cutouts.map((row) => ({ ...row, key: blankCutout().key })),
	tones: form.tones.map((row) => ({ ...row, key: blankTone().key })),
});

/** A pause in typing. */
const PAUSE_MS = 1_500;

/** Why the last text could not be kept; `""` when it is. */
export function useDraft(ask: Ask, text: string, kept: string): string {
	const [problem, setProblem] = useState("");
	const last = useRef(kept);
	const now = useRef(text);
	now.current = text;
	const keep = useCallback(() => {
		const sent = now.current;
		if (last.current === sent) return;
		last.current = sent;
		ask("keepDraft", sent).then(
			() => setProblem(""),
			(error) => {
				last.current = "\0";
				setProblem(failureOf(error).text);
			},
		);
	}, [ask]);
	useEffect(() => {
		const timer = setTimeout(keep, text === "" ? 0 : PAUSE_MS);
		return () => clearTimeout(timer);
	}, [keep, text]);
	useEffect(() => {
		// Sooner where the person turns to something else, which may be a dialog over the panel.
		window.addEventListener("blur", keep);
		return () => window.removeEventListener("blur", keep);
	}, [keep]);
	return problem;
}
