import { accessSync, constants } from "node:fs";

function isProgram(path: string): boolean {
	try {
		accessSync(path, constants.X_OK);
		return true;
	} catch {
		return false;
	}
}

/** Path of a program on this computer: the one that is named, else the first of the usual places that has one. */
export function programAt(
	named: string | undefined,
	places: readonly string[],
): string | undefined {
	if (named) return isProgram(named) ? named : undefined;
	return places.find(isProgram);
}
