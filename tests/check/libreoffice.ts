import { programAt } from "../../src/desk/program";
import { install, isDebianRoot } from "./install";

const KNOWN_PLACES = [
	"/usr/bin/soffice",
	"/usr/bin/libreoffice",
	"/usr/local/bin/soffice",
	"/Applications/LibreOffice.app/Contents/MacOS/soffice",
];

/** The program of LibreOffice on this computer: the one `SOFFICE` names, or a system's own. */
export const findLibreOffice = (): string | undefined =>
	programAt(process.env.SOFFICE, KNOWN_PLACES);

/** Installs LibreOffice's spreadsheet where it is missing and may be installed; without it the tests that need it fail. */
export function getLibreOffice(): void {
	if (findLibreOffice() || !isDebianRoot()) return;
	console.log("\nNo LibreOffice is installed: getting its spreadsheet");
	install("libreoffice-calc");
}
