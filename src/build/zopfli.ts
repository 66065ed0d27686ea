/** Texts packed as short as deflate can be: Zopfli searches where zlib guesses, a twentieth shorter. */

/** More rounds save no hundred bytes. */
const ROUNDS = { numiterations: 1 };

const EVENTS: readonly string[] = ["uncaughtException", "unhandledRejection"];

export const deflated = async (text: string): Promise<Uint8Array> =>
	(await zopfli).deflateAsync(Buffer.from(text), ROUNDS);

export const gzipped = async (text: string): Promise<Uint8Array> =>
	(await zopfli).gzipAsync(Buffer.from(text), ROUNDS);

const zopfli = withoutItsListeners();

/** The library, but what it does at an uncaught error: it would print its whole source before every mistake in a build. */
async function withoutItsListeners() {
	const before = EVENTS.map((event) => process.listeners(event as "exit"));
	const library = await import("@gfx/zopfli");
	EVENTS.forEach((event, i) => {
		for (const listener of process.listeners(event as "exit"))
			if (!before[i]?.includes(listener)) process.off(event, listener);
	});
	return library;
}
