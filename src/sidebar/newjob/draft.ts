/** The unfinished form as a text that the script keeps, and back. */

import type { PanelStart } from "../../sheets/messages";
import {
	blankCutout,
	blankForm,
	blankPiece,
	blankTone,
	type JobForm,
	pieceIsBlank,
} from "./form";

/** Forms of another build of the panel are not read. */
const BUILD = 1;

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
	...blankForm(start, start.units),
	...form,
	units: start.unitsFixed ? start.units : form.units,
	pieces: form.pieces.map((row) => ({ ...row, key: blankPiece().key })),
	cutouts: form.cutouts.map((row) => ({ ...row, key: blankCutout().key })),
	tones: form.tones.map((row) => ({ ...row, key: blankTone().key })),
});
