import { createContext, runInContext } from "node:vm";

const SERVICES = [
	"SpreadsheetApp",
	"HtmlService",
	"PropertiesService",
	"LockService",
	"CacheService",
	"Utilities",
	"Session",
	"ScriptApp",
	"Logger",
];

/**
 * Complaints of what a script does when it is loaded: before the first use the add-on may touch no service there,
 * not even to see whether there is one, or its menu shows nothing but Help.
 */
export function loadComplaints(code: string): string[] {
	const touched: string[] = [];
	const context = createContext({});
	for (const service of SERVICES)
		Object.defineProperty(context, service, {
			get: () => {
				touched.push(`touches ${service} when it is loaded`);
			},
		});
	try {
		runInContext(code, context, { filename: "Code.js", timeout: 30_000 });
	} catch (error) {
		return [...touched, `fails when it is loaded: ${error}`];
	}
	return touched;
}
