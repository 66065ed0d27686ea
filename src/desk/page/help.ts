/** What a cell shows about a function while its formula is typed, from the comments of the built script. */

export interface ParamHelp {
	name: string;
	example: string;
	detail: string;
}

export interface FunctionHelp {
	about: string;
	params: ParamHelp[];
}

const COMMENTED = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*function (\w+)\(/g;
const PARAM = /^@param \{(.*?)\} (\w+) ?(.*)$/;

/** The lines of a comment without its stars. */
function linesOf(comment: string): string[] {
	return comment
		.split("\n")
		.map((line) => line.replace(/^\s*\*\s?/, "").trim())
		.filter((line) => line !== "");
}

function helpIn(comment: string): FunctionHelp {
	const lines = linesOf(comment);
	const about = lines.filter((line) => !line.startsWith("@")).join(" ");
	const params = lines.flatMap((line) => {
		const [, example = "", name = "", detail = ""] = PARAM.exec(line) ?? [];
		return name ? [{ name, example, detail }] : [];
	});
	return { about, params };
}

/** Help of every custom function, by its name. */
export function readHelp(code: string): ReadonlyMap<string, FunctionHelp> {
	const found = [...code.matchAll(COMMENTED)]
		.filter(([, comment = ""]) => comment.includes("@customfunction"))
		.map(([, comment = "", name = ""]) => [name, helpIn(comment)] as const);
	return new Map(found);
}
