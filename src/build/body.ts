import { differentLine } from "./gates/tokens";

/**
 * A module's code as the body of a function that returns what the module exports.
 *
 * @throws Error where the indent is part of a text.
 */
export const bodyOf = (module: string): string =>
	indentByTabs(module)
		.replace(/export \{([^{}]*)\};\s*$/, (_, names: string) => {
			const returned = names.replace(/(\w+) as (\w+)/g, "$2: $1");
			return `return {${returned}};`;
		})
		.replace(/^(?=.)/gm, "\t");

/** The bundler indents by two spaces, the sources by a tab. @throws Error where the indent is part of a text. */
export function indentByTabs(code: string): string {
	const tabs = code.replace(/^(?: {2})+/gm, ({ length }) =>
		"\t".repeat(length / 2),
	);
	const line = differentLine(code, tabs);
	if (line)
		throw new Error(
			`A text goes on in the next line: write it with \\n (line ${line} of the bundle)`,
		);
	return tabs;
}
