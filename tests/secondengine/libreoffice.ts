/** LibreOffice, which calculates a workbook a second time. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findLibreOffice } from "../check/libreoffice";

/** The files opened, calculated and written anew. @throws Error where there is no LibreOffice: then nothing was checked. */
export function recalculated(files: readonly Uint8Array[]): Uint8Array[] {
	const program = findLibreOffice();
	if (!program)
		throw new Error(
			"NOT CHECKED: no LibreOffice was found. Install libreoffice-calc, or name its program in SOFFICE.",
		);
	const folder = mkdtempSync(join(tmpdir(), "tonefold-"));
	try {
		const sources = files.map((file, index) => {
			const source = join(folder, `book${index}.xlsx`);
			writeFileSync(source, file);
			return source;
		});
		execFileSync(
			program,
			[
				"--headless",
				// a profile of its own: with the user's a second program only hands over and ends
				`-env:UserInstallation=file://${folder}/profile`,
				"--convert-to",
				"xlsx:Calc MS Excel 2007 XML",
				"--outdir",
				join(folder, "out"),
				...sources,
			],
			{ stdio: "ignore", timeout: 300_000 },
		);
		return files.map((_, index) =>
			readFileSync(join(folder, "out", `book${index}.xlsx`)),
		);
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}
