/** Protected cells. Without editors taken away a protection only warns, and that is all the desk knows of it. */
import type { Worksheet } from "@univerjs/core";
import type { Block } from "../a1";
import { type Call, type ProtectionNote, signature } from "./call";
import { type Place, sheetAt } from "./place";
import { rangeService } from "./range";

type Protection = GoogleAppsScript.Spreadsheet.Protection;
type Methods = Pick<
	Protection,
	| "getDescription"
	| "getRange"
	| "isWarningOnly"
	| "remove"
	| "setDescription"
	| "setUnprotectedRanges"
	| "setWarningOnly"
>;

export function protectionService(
	call: Call,
	note: ProtectionNote,
): Protection {
	const methods: Methods = {
		getDescription: () => note.description,
		isWarningOnly: () => note.warningOnly,
		getRange() {
			const sheet = sheetAt(call, note);
			const whole = {
				startRow: 0,
				startColumn: 0,
				endRow: sheet.getRowCount() - 1,
				endColumn: sheet.getColumnCount() - 1,
			};
			return rangeService(call, {
				sheetId: note.sheetId,
				block: note.block ?? whole,
			});
		},
		remove() {
			call.written = true;
			const { protections } = call.host;
			protections.splice(protections.indexOf(note), 1);
		},
		setDescription(text) {
			note.description = String(text);
			return served;
		},
		setUnprotectedRanges(ranges: unknown) {
			if (note.block)
				throw new Error("Only a protected sheet can have unprotected ranges.");
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

/** Protects cells, or a whole tab. */
export function protect(
	call: Call,
	sheet: Worksheet,
	block: Block | undefined,
): Protection {
	call.written = true;
	const note = {
		sheetId: sheet.getSheetId(),
		block,
		description: "",
		warningOnly: false,
	};
	call.host.protections.push(note);
	return protectionService(call, note);
}

/** The protections of a tab: of the whole, or of ranges. */
export function protectionsOf(
	call: Call,
	sheetId: string,
	kind: unknown,
): Protection[] {
	return call.host.protections
		.filter((note) => note.sheetId === sheetId)
		.filter((note) => (note.block === undefined) === (kind === "SHEET"))
		.map((note) => protectionService(call, note));
}
