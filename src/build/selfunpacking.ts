/** The panel's script as a short text that unpacks itself: a third as long, and as quick to open. */
import { inflateRawSync } from "node:zlib";
import { bytesOf, LETTERS_TO_BYTES, lettersOf } from "./letters";
import { deflated } from "./zopfli";

const TOO_OLD =
	"This browser cannot unpack the panel. A newer one can; everything also works in cells.";

/** Unpacks with the browser's own stream and runs the script as one of the page's own. */
export async function selfUnpacking(script: string): Promise<string> {
	const packed = lettersOf(await deflated(script));
	return `(async (packed) => {
	const place = document.getElementById("panel");
	try {
		const bytes = Uint8Array.from((${LETTERS_TO_BYTES})(packed));
		const plain = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
		const script = document.createElement("script");
		script.textContent = await new Response(plain).text();
		document.head.append(script);
	} catch {
		place.textContent = ${JSON.stringify(TOO_OLD)};
	}
})("${packed}");`;
}

/** The script that a page unpacks; nothing where it has none. */
export function unpackedScript(html: string): string {
	const [, packed] = /\}\)\("([!-~]*)"\);/.exec(html) ?? [];
	return packed === undefined
		? ""
		: inflateRawSync(Uint8Array.from(bytesOf(packed))).toString();
}
