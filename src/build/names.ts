/** Names that Sheets reads as something else: a cell, a column and row of the other notation, a truth value. */
const READ_OTHERWISE =
	/^([A-Z]{1,3}\d+|R\d*C\d*|R\d+|C\d+|TRUE|FALSE|[A-Z]{1,3})$/;

/** True when a cell may call a function of this name: a trailing `_` would make it private. */
export function isSheetFunctionName(name: string): boolean {
	return /^[A-Z][A-Z0-9_]*[A-Z0-9]$/.test(name) && !READ_OTHERWISE.test(name);
}

/** True for a menu, trigger or panel function: told from a sheet function at a glance. */
export function isEntryPointName(name: string): boolean {
	return /^[a-z][A-Za-z0-9]*_?$/.test(name);
}
