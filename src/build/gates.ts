import { loadComplaints } from "./gates/load";
import { manifestComplaints } from "./gates/manifest";
import { panelComplaints } from "./gates/panel";
import { scriptComplaints } from "./gates/script";
import { stubComplaints } from "./gates/stubs";

/** The files that go to Google, by name. */
export interface Dist {
	"Code.js": string;
	"Templates.js": string;
	"Panel.html": string;
	"appsscript.json": string;
}

/** Larger files would work as well: the limits are there to notice how they grow. */
export const LIMITS_KB = {
	"Code.js": 740,
	"Templates.js": 250,
	"Panel.html": 660,
};

/** Bytes as a person reads them, in thousands. */
export const kilobytes = (text: string): number =>
	Buffer.byteLength(text) / 1000;

/** What keeps the files from going to Google; nothing, when all is well. */
export function complaints(
	dist: Dist,
	sheetFunctions: readonly string[],
): string[] {
	const { "Code.js": code, "Templates.js": templates } = dist;
	const script = [
		...fileComplaints(code, sheetFunctions),
		...fileComplaints(templates).map((line) => `Templates.js: ${line}`),
	];
	return [
		...script,
		...(script.length ? [] : loadComplaints(code + templates)),
		...panelComplaints(dist["Panel.html"]),
		...manifestComplaints(dist["appsscript.json"]),
		...sizeComplaints(dist),
	];
}

function fileComplaints(
	code: string,
	sheetFunctions: readonly string[] = [],
): string[] {
	const syntax = scriptComplaints(code);
	return syntax.length ? syntax : stubComplaints(code, sheetFunctions);
}

function sizeComplaints(dist: Dist): string[] {
	return Object.entries(LIMITS_KB).flatMap(([file, limit]) => {
		const size = kilobytes(dist[file as keyof typeof LIMITS_KB]);
		return size <= limit
			? []
			: [`${file} has ${size.toFixed(1)} kB, more than ${limit}`];
	});
}
