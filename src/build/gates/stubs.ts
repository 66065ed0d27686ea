import { type Comment, type FunctionDeclaration, parse } from "acorn";
import { isEntryPointName, isSheetFunctionName } from "../names";
import { NAMESPACE } from "../stubs";

/**
 * Complaints of the top level: one private global, plain functions with legal names, each with its comment
 * directly above, since Sheets reads help from nowhere else; every sheet function there, its arguments explained.
 */
export function stubComplaints(
	code: string,
	sheetFunctions: readonly string[],
): string[] {
	const comments: Comment[] = [];
	const { body } = parse(code, {
		ecmaVersion: 2020,
		sourceType: "script",
		onComment: comments,
	});
	const stubs = body.flatMap((node) =>
		node.type === "FunctionDeclaration" ? [node as FunctionDeclaration] : [],
	);
	const names = stubs.map(({ id }) => id.name);
	return [
		...otherGlobals(body),
		...sheetFunctions
			.filter((name) => !names.includes(name))
			.map((name) => `${name}: no top-level function`),
		...names
			.filter((name, i) => names.indexOf(name) !== i)
			.map((name) => `${name}: declared twice`),
		...stubs.flatMap((stub) => {
			const sheet = sheetFunctions.includes(stub.id.name);
			const legal = sheet ? isSheetFunctionName : isEntryPointName;
			return [
				...(legal(stub.id.name) ? [] : ["not a name that can be called"]),
				...helpComplaints(stub, commentAbove(code, comments, stub), sheet),
			].map((complaint) => `${stub.id.name}: ${complaint}`);
		}),
	];
}

function otherGlobals(body: ReturnType<typeof parse>["body"]): string[] {
	return body.flatMap((node) => {
		if (node.type === "FunctionDeclaration" || "directive" in node) return [];
		const names =
			node.type === "VariableDeclaration"
				? node.declarations.map(({ id }) =>
						id.type === "Identifier" ? id.name : id.type,
					)
				: [node.type];
		return names
			.filter((name) => name !== NAMESPACE)
			.map((name) => `${name}: not a function, at the top level`);
	});
}

function commentAbove(
	code: string,
	comments: readonly Comment[],
	stub: FunctionDeclaration,
): string {
	const above = comments.filter(({ end }) => end <= stub.start).pop();
	if (!above || !/^\s*$/.test(code.slice(above.end, stub.start))) return "";
	return above.value.startsWith("*") ? above.value : "";
}

function helpComplaints(
	stub: FunctionDeclaration,
	help: string,
	sheet: boolean,
): string[] {
	if (!help) return ["no /** */ directly above"];
	const listed = /@customfunction\b/.test(help);
	if (!sheet) return listed ? ["listed as a sheet function"] : [];
	const params = stub.params.map((param) =>
		param.type === "Identifier" ? param.name : param.type,
	);
	const explained = [...help.matchAll(/@param \{[^{}]*\} (\S+) \S/g)].map(
		([, name]) => name,
	);
	return [
		...(listed ? [] : ["no @customfunction"]),
		...(/^\*\s*\*\s*\w/.test(help) ? [] : ["no summary"]),
		...(explained.join() === params.join()
			? []
			: [`explains (${explained}), takes (${params})`]),
	];
}
