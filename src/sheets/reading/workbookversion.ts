/** Which version of Tonefold made the workbook's tabs. */
import { InputError } from "../../calc/errors";
import { VERSION } from "../../job/version";
import { STUDIO_PREFIX } from "./rangenames";

const NAME = `${STUDIO_PREFIX}version`;

const partsOf = (version: string): number[] => version.split(".").map(Number);

/** Whether the first of two versions is the later one. */
function isLater(one: string, other: string): boolean {
	const [own, against] = [partsOf(one), partsOf(other)];
	const at = own.findIndex((part, index) => part !== (against[index] ?? 0));
	return at >= 0 && (own[at] ?? 0) > (against[at] ?? 0);
}

/** @throws InputError for tabs that this script would misread: they are left alone. */
export function checkVersion(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
): void {
	const cell = spreadsheet.getRangeByName(NAME);
	if (!cell)
		throw new InputError(
			"Tonefold 0.1 made the tabs of this workbook, and this version does not read or change them: start in a new workbook. If the tabs are newer, the name studio_version is gone: bring it back with File, Version history",
		);
	const version = String(cell.getValue()).trim();
	if (isLater(version, VERSION))
		throw new InputError(
			`Tonefold ${version} made the tabs of this workbook, and this is ${VERSION}: reload the page, or update the add-on`,
		);
}
