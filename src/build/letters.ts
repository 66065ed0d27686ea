/**
 * Bytes as printable letters that need no escape in a page or a script: 13 bits in two letters, a twelfth shorter than
 * base64.
 */

/** All of ASCII that is seen, but `"`, `<` and the backslash. */
const LETTERS = Array.from({ length: 94 }, (_, code) =>
	String.fromCharCode(33 + code),
)
	.filter((letter) => !'"<\\'.includes(letter))
	.join("");

const BASE = 91;
const BITS = 13;

/** The bytes as letters; an end that is no whole group is filled with zeros. */
export function lettersOf(bytes: Uint8Array): string {
	let text = "";
	let held = 0;
	let bits = 0;
	const put = (group: number) => {
		text += LETTERS.charAt(Math.floor(group / BASE));
		text += LETTERS.charAt(group % BASE);
	};
	for (const byte of bytes) {
		held |= byte << bits;
		bits += 8;
		if (bits < BITS) continue;
		put(held & (2 ** BITS - 1));
		held >>= BITS;
		bits -= BITS;
	}
	if (bits > 0) put(held);
	return text;
}

/** Source of a function from letters back to bytes, with at most one zero byte behind them. */
export const LETTERS_TO_BYTES = `(text) => {
	const code = (at) => { const c = text.charCodeAt(at); return c - 33 - (c > 34) - (c > 60) - (c > 92); };
	const bytes = [];
	for (let at = 0, held = 0, bits = 0; at < text.length; at += 2) {
		held |= (code(at) * 91 + code(at + 1)) << bits;
		for (bits += 13; bits > 7; bits -= 8) { bytes.push(held & 255); held >>= 8; }
	}
	return bytes;
}`;

/** Letters back to bytes. */
export const bytesOf = (text: string): number[] =>
	(new Function(`return ${LETTERS_TO_BYTES}`)() as (text: string) => number[])(
		text,
	);
