import { accessSync, constants } from "node:fs";
import { install, isDebianRoot } from "./install";

const KNOWN_PLACES = [
	"/usr/bin/soffice",
	"/usr/bin/libreoffice",
	"/usr/local/bin/soffice",
	"/Applications/LibreOffice.app/Contents/MacOS/soffice",
];

function isProgram(path: string): boolean {
	try {
		accessSync(path, constants.X_OK);
		return true;
	} catch {
		return false;
	}
}

/** The program of LibreOffice on this computer: the one `SOFFICE` names, or a system's own. */
export function findLibreOffice(): string | undefined {
	const named = process.env.SOFFICE;
	if (named) return isProgram(named) ? named : undefined;
	return KNOWN_PLACES.find(isProgram);
}

/** Installs LibreOffice's spreadsheet where it is missing and may be installed; without it the tests that need it fail. */
export function getLibreOffice(): void {
	if (findLibreOffice() || !isDebianRoot()) return;
	console.log("\nNo LibreOffice is installed: getting its spreadsheet");
	install("libreoffice-calc");
}
