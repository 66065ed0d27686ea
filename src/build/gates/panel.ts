import { unpackedScript } from "../selfunpacking";

/** What a page would fetch, by what asks for it. */
const LOADS: Record<string, RegExp> = {
	"an element that loads a file":
		/<(script|link|img|iframe|object|embed)\b[^>]*\s(src|href|data)\s*=/i,
	"a style that loads a file": /@import|\burl\(\s*["']?(?!data:)/i,
	"a script that loads a file":
		/\bfetch\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|\bimport\(/,
	"a template mark": /<\?/,
	"what a sandboxed page has not":
		/\b(localStorage|sessionStorage|indexedDB)\b|document\.cookie/,
};

/** Complaints of the panel: one page that loads nothing, small. */
export function panelComplaints(html: string): string[] {
	// In a script that is unpacked `a<?b` would be no mark of a template: Google never reads it.
	const script = unpackedScript(html).replace(/<\?/g, "");
	const found = Object.entries(LOADS)
		.filter(([, pattern]) => pattern.test(html) || pattern.test(script))
		.map(([what]) => `Panel.html has ${what}`);
	const scripts = html.match(/<\/script/gi)?.length ?? 0;
	const elements =
		scripts === 2 ? [] : [`Panel.html has ${scripts} ends of a script, not 2`];
	return [...found, ...elements];
}
