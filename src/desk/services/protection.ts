/** Protected tabs. Without editors taken away a protection only warns, and that is all the desk knows of it. */
import type { Worksheet } from "@univerjs/core";
import { type Call, type ProtectionNote, signature } from "./call";
import type { Place } from "./place";

type Protection = GoogleAppsScript.Spreadsheet.Protection;
type Methods = Pick<Protection, "setUnprotectedRanges" | "setWarningOnly">;

/** Protects a tab. */
export function protect(call: Call, sheet: Worksheet): Protection {
	call.written = true;
	const note: ProtectionNote = {
		sheetId: sheet.getSheetId(),
		warningOnly: false,
	};
	call.host.protections.push(note);
	const methods: Methods = {
		setUnprotectedRanges(ranges: unknown) {
			if (!Array.isArray(ranges))
				throw signature(
					[ranges],
					"SpreadsheetApp.Protection.setUnprotectedRanges",
				);
			note.unprotected = Array.from(
				ranges,
				(range) => call.inner<Place>(range, "Range").block,
			);
			return served;
		},
		setWarningOnly(on) {
			note.warningOnly = Boolean(on);
			return served;
		},
	};
	const served: Protection = call.serve<Protection>("Protection", methods);
	return served;
}
