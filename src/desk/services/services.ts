/** Every global service that the script finds, by name. */
import type { Call, Members } from "./call";
import { newConditionalFormatRule } from "./conditional";
import { htmlService } from "./html";
import { COPY_PASTE_TYPES } from "./paste";
import { lockService, propertiesServices } from "./properties";
import { rangeService } from "./range";
import { sheetService } from "./sheet";
import { activePlace, spreadsheetService } from "./spreadsheet";
import { BORDER_STYLES } from "./style";
import { uiService } from "./ui";
import { utilities } from "./utilities";
import { newDataValidation } from "./validation";

const names = (...words: string[]) =>
	Object.fromEntries(words.map((word) => [word, word]));

function spreadsheetApp(call: Call): Members {
	return {
		BorderStyle: BORDER_STYLES,
		CopyPasteType: COPY_PASTE_TYPES,
		ProtectionType: names("RANGE", "SHEET"),
		WrapStrategy: names("WRAP", "OVERFLOW", "CLIP"),
		flush: () => null,
		getActive: () => spreadsheetService(call),
		getActiveRange: () => rangeService(call, activePlace(call)),
		getActiveSheet: () => sheetService(call, activePlace(call)),
		getActiveSpreadsheet: () => spreadsheetService(call),
		getUi: () => uiService(call),
		newConditionalFormatRule: () => newConditionalFormatRule(call),
		newDataValidation: () => newDataValidation(call),
	} satisfies Partial<
		Record<keyof GoogleAppsScript.Spreadsheet.SpreadsheetApp, unknown>
	>;
}

/** The names a script may use; there is nothing else in its context. */
export const SERVICES = [
	"SpreadsheetApp",
	"HtmlService",
	"PropertiesService",
	"LockService",
	"ScriptApp",
	"Session",
	"Utilities",
	"Logger",
] as const;

export type Services = Readonly<Record<(typeof SERVICES)[number], unknown>>;

export function servicesOf(call: Call): Services {
	return {
		SpreadsheetApp: call.serve("SpreadsheetApp", spreadsheetApp(call)),
		HtmlService: htmlService(call),
		PropertiesService: propertiesServices(call),
		LockService: lockService(call),
		ScriptApp: call.serve("ScriptApp", {
			AuthMode: names("NONE", "CUSTOM_FUNCTION", "LIMITED", "FULL"),
		}),
		Session: call.serve("Session", { getActiveUserLocale: () => "en" }),
		Utilities: utilities(call),
		Logger: call.serve("Logger", { log: () => null }),
	};
}

/** What a cell's function finds: services that refuse everything. */
export function refusedServices(): Services {
	const refused = (name: string) =>
		new Proxy(
			{},
			{
				get(_target, key) {
					throw new Error(
						`You do not have permission to call ${name}.${String(key)}.`,
					);
				},
			},
		);
	return Object.fromEntries(
		SERVICES.map((name) => [name, refused(name)]),
	) as Record<(typeof SERVICES)[number], unknown>;
}
