import type { Written } from "./files";
import { imports } from "./imports";

/** The one file of the desk that may know what the engine does not offer. */
export const ENGINE_PRIVATE = "src/desk/engine-private.ts";

/** A package itself, and what it offers beside: its facade, its texts, its style sheet. */
const OFFERED =
	/^@univerjs\/[\w-]+(?:\/facade|\/locales\/[a-zA-Z-]+|\/lib\/index\.css)?$/;

/** Where code reaches past types, or names a member that begins with `_`. */
const REACHING: readonly RegExp[] = [
	/\bas\s+(?:unknown|any)\s+as\b/g,
	/\bas\s+(?:any|never)\b/g,
	/\.\s*_\w+/g,
	/\[\s*["'`]_\w+["'`]\s*\]/g,
	/@ts-(?:ignore|expect-error)/g,
];

/** Where a file of the desk reaches into the engine's private parts, as sentences. */
export function privateReach({ file, text }: Written): string[] {
	if (!file.startsWith("src/desk/") || file === ENGINE_PRIVATE) return [];
	const deep = imports(text)
		.map(({ from }) => from)
		.filter((from) => from.startsWith("@univerjs/") && !OFFERED.test(from));
	const reaching = REACHING.flatMap((pattern) =>
		[...text.matchAll(pattern)].map(([found]) => found),
	);
	return [...deep, ...reaching].map((what) => `${file} has ${what}`);
}
