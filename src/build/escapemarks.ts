import { differentLine, tokensOf } from "./gates/tokens";

/** What a page's script may not hold in a text: Google reads comments there, and a browser marks and ends of elements. */
const MARK = /\/(?=[/*])|<(?=[!?/])/g;

const escapeOf = (sign: string): string =>
	`\\u00${sign.charCodeAt(0).toString(16)}`;

/**
 * A script with such marks in its texts escaped: `"http://a"` becomes `"http:\u002f/a"`, which means the same.
 *
 * @throws Error where it would not.
 */
export function escapeMarks(script: string): string {
	const texts = tokensOf(script).filter(({ type }) =>
		["string", "template"].includes(type.label),
	);
	let copied = 0;
	const parts = texts.flatMap(({ start, end }) => {
		const before = script.slice(copied, start);
		copied = end;
		return [before, script.slice(start, end).replace(MARK, escapeOf)];
	});
	const escaped = parts.join("") + script.slice(copied);
	const line = differentLine(script, escaped);
	if (line) throw new Error(`line ${line}: cannot be escaped: ${MARK}`);
	return escaped;
}
