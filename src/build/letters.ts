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

/** One letter holds so many bits of an end that is no whole group: with two there would be a byte too many. */
const LAST_BITS = 6;

/** The bytes as letters. */
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
	if (bits > LAST_BITS) put(held);
	else if (bits > 0) text += LETTERS.charAt(held);
	return text;
}

/** Source of a function from letters back to bytes. */
export const LETTERS_TO_BYTES = `(text) => {
	const code = (at) => { const c = text.charCodeAt(at); return c - 33 - (c > 34) - (c > 60) - (c > 92); };
	const bytes = [];
	for (let at = 0, held = 0, bits = 0; at < text.length; at += 2) {
		const last = at + 1 === text.length;
		held |= (last ? code(at) : code(at) * 91 + code(at + 1)) << bits;
		for (bits += last ? 6 : 13; bits > 7; bits -= 8) { bytes.push(held & 255); held >>= 8; }
	}
	return bytes;
}`;

/** Letters back to bytes. */
export const bytesOf = (text: string): number[] =>
	(new Function(`return ${LETTERS_TO_BYTES}`)() as (text: string) => number[])(
		text,
	);
