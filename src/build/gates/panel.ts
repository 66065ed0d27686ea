import { stripped, strippedComplaints } from "./stripped";

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

const SCRIPT = /<script>([\s\S]*?)<\/script>/i;

/** Complaints of the panel: one page that loads nothing, with one script that Google may strip of comments. */
export function panelComplaints(html: string): string[] {
	const served = html.replace(SCRIPT, stripped);
	const found = Object.entries(LOADS)
		.filter(([, pattern]) => pattern.test(served))
		.map(([what]) => `Panel.html has ${what}`);
	const scripts = html.match(/<\/script/gi)?.length ?? 0;
	if (scripts !== 1)
		return [...found, `Panel.html has ${scripts} ends of a script, not 1`];
	const [, script = ""] = SCRIPT.exec(html) ?? [];
	return [
		...found,
		...strippedComplaints(script).map((line) => `Panel.html: ${line}`),
	];
}
