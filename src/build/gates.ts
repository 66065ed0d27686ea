import { loadComplaints } from "./gates/load";
import { manifestComplaints } from "./gates/manifest";
import { panelComplaints } from "./gates/panel";
import { scriptComplaints } from "./gates/script";
import { stubComplaints } from "./gates/stubs";

/** The files that go to Google, by name. */
export interface Dist {
	"Code.js": string;
	"Panel.html": string;
	"appsscript.json": string;
}

const LIMITS_KB = { "Code.js": 160, "Panel.html": 120 };

/** Bytes as a person reads them, in thousands. */
export const kilobytes = (text: string): number =>
	Buffer.byteLength(text) / 1000;

/** What keeps the three files from going to Google; nothing, when all is well. */
export function complaints(
	dist: Dist,
	sheetFunctions: readonly string[],
): string[] {
	const code = dist["Code.js"];
	const syntax = scriptComplaints(code);
	return [
		...syntax,
		...(syntax.length ? [] : stubComplaints(code, sheetFunctions)),
		...(syntax.length ? [] : loadComplaints(code)),
		...panelComplaints(dist["Panel.html"]),
		...manifestComplaints(dist["appsscript.json"]),
		...sizeComplaints(dist),
	];
}

function sizeComplaints(dist: Dist): string[] {
	return Object.entries(LIMITS_KB).flatMap(([file, limit]) => {
		const size = kilobytes(dist[file as keyof typeof LIMITS_KB]);
		return size <= limit
			? []
			: [`${file} has ${size.toFixed(1)} kB, more than ${limit}`];
	});
}
