/** Texts packed as short as deflate can be: Zopfli searches where zlib guesses, a twentieth shorter. */
import { deflateAsync, gzipAsync } from "@gfx/zopfli";

/** More rounds save no hundred bytes. */
const ROUNDS = { numiterations: 1 };

export const deflated = (text: string): Promise<Uint8Array> =>
	deflateAsync(Buffer.from(text), ROUNDS);

export const gzipped = (text: string): Promise<Uint8Array> =>
	gzipAsync(Buffer.from(text), ROUNDS);
