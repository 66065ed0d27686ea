import { readFileSync } from "node:fs";
import { type Pattern, parse } from "acorn";
import { build } from "esbuild";

export interface EntryPoint {
	name: string;
	params: string[];
	/** First sentence of its documentation. */
	doc: string;
}

/** What a module exports as functions: the script's entry points, by name. */
export async function entryPoints(file: string): Promise<EntryPoint[]> {
	const result = await build({
		entryPoints: [file],
		bundle: true,
		write: false,
		metafile: true,
		format: "esm",
		platform: "neutral",
		target: "es2020",
	});
	const docs = documented(Object.keys(result.metafile.inputs));
	return exportedFunctions(result.outputFiles[0]?.text ?? "").map((entry) => {
		const doc = docs.get(entry.name);
		if (!doc) throw new Error(`${entry.name}: an entry point needs a /** */`);
		return { ...entry, doc };
	});
}

function exportedFunctions(code: string): Omit<EntryPoint, "doc">[] {
	const { body } = parse(code, { ecmaVersion: 2020, sourceType: "module" });
	const params = new Map(
		body.flatMap((node) =>
			node.type === "FunctionDeclaration"
				? [[node.id.name, node.params.map(paramName)] as const]
				: [],
		),
	);
	const exported = body.flatMap((node) =>
		node.type === "ExportNamedDeclaration" ? node.specifiers : [],
	);
	return exported.map(({ local, exported: as }) => {
		if (local.type !== "Identifier" || as.type !== "Identifier")
			throw new Error("an entry point's name is a plain name");
		const names = params.get(local.name);
		if (!names) throw new Error(`${as.name}: not a plain function`);
		return { name: as.name, params: names };
	});
}

function paramName(param: Pattern, index: number): string {
	if (param.type === "Identifier") return param.name;
	if (param.type === "AssignmentPattern") return paramName(param.left, index);
	return `input${index + 1}`;
}

/** The bundler drops comments, so they are read where they were written. */
function documented(files: readonly string[]): Map<string, string> {
	const doc = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g;
	return new Map(
		files
			.flatMap((file) => [...readFileSync(file, "utf8").matchAll(doc)])
			.map(([, text = "", name = ""]) => [name, firstSentence(text)]),
	);
}

function firstSentence(comment: string): string {
	const text = comment
		.replace(/^\s*\*/gm, "")
		.replace(/\s+/g, " ")
		.trim();
	return text.split(/(?<=\.)\s/)[0] ?? text;
}
