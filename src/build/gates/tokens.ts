import { parse, type Token } from "acorn";

/** The tokens of a module, up to the first fault in it. */
export function tokensOf(code: string): Token[] {
	const tokens: Token[] = [];
	try {
		parse(code, {
			ecmaVersion: 2020,
			sourceType: "module",
			locations: true,
			onToken: tokens,
		});
	} catch (error) {
		if (!(error instanceof SyntaxError)) throw error;
	}
	return tokens;
}

/** A token's kind and value, however it is spelled. */
function meaning(token: Token): string {
	const { type, value } = token as Token & { value: unknown };
	return JSON.stringify([type.label, value], (_, part) =>
		part instanceof RegExp ? String(part) : part,
	);
}

/** Line of the first token in which a changed code is another program, from 1; undefined where it is the same. */
export function differentLine(
	code: string,
	changed: string,
): number | undefined {
	const others = tokensOf(changed);
	const different = tokensOf(code).find((token, i) => {
		const other = others[i];
		return !other || meaning(token) !== meaning(other);
	});
	return different?.loc?.start.line;
}
