/** Rows of cells out of what was copied from a sheet: tabs, semicolons or commas between, quotes where needed. */

/** A tab beats a semicolon, that beats a comma: lengths have commas, hardly ever tabs. */
function delimiterOf(text: string): string {
	if (text.includes("\t")) return "\t";
	return text.includes(";") ? ";" : ",";
}

/** A quoted cell holds delimiters and line ends; a quote within it is doubled. Inches (`25 1/2"`) do not open one. */
export function delimitedRows(text: string): string[][] {
	const delimiter = delimiterOf(text);
	const cell = new RegExp(
		`("(?:[^"]|"")*"(?=\\s*(?:${delimiter}|\\r?\\n|$)))|[^${delimiter}\\n]*`,
		"y",
	);
	const rows: string[][] = [[]];
	let at = 0;
	while (at <= text.length) {
		cell.lastIndex = at;
		const [found = "", quoted] = cell.exec(text) ?? [];
		const plain = quoted ? quoted.slice(1, -1).replace(/""/g, '"') : found;
		rows[rows.length - 1]?.push(plain.trim());
		at += found.length;
		while (quoted && /[^\S\n\t]/.test(text[at] ?? "")) at += 1;
		if (text[at] === "\n") rows.push([]);
		at += 1;
	}
	return rows.filter((row) => row.some((value) => value !== ""));
}
