/** Every global service that the script finds, by name. */
import type { Call, Members } from "./call";
import { newConditionalFormatRule } from "./conditional";
import { htmlService } from "./html";
import { COPY_PASTE_TYPES } from "./paste";
import { lockService, propertiesServices } from "./properties";
import { spreadsheetService } from "./spreadsheet";
import { uiService } from "./ui";
import { utilities } from "./utilities";
import { newDataValidation } from "./validation";

function spreadsheetApp(call: Call): Members {
	return {
		CopyPasteType: COPY_PASTE_TYPES,
		flush: () => null,
		getActive: () => spreadsheetService(call),
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
	"Utilities",
] as const;

export type Services = Readonly<Record<(typeof SERVICES)[number], unknown>>;

export function servicesOf(call: Call): Services {
	return {
		SpreadsheetApp: call.serve("SpreadsheetApp", spreadsheetApp(call)),
		HtmlService: htmlService(call),
		PropertiesService: propertiesServices(call),
		LockService: lockService(call),
		Utilities: utilities(call),
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
