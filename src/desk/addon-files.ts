import type { AddOn } from "./contract";

/** The add-on out of the texts of its built files, by name; scripts share one scope, as on the platform. */
export function addOnOf(files: Readonly<Record<string, string>>): AddOn {
	const ending = (end: string) =>
		Object.entries(files)
			.filter(([name]) => name.endsWith(end))
			.sort(([a], [b]) => (a < b ? -1 : 1));
	return {
		name: "Tonefold",
		code: ending(".js")
			.map(([, text]) => text)
			.join("\n"),
		pages: Object.fromEntries(
			ending(".html").map(([name, page]) => [
				name.slice(0, -".html".length),
				page,
			]),
		),
		manifest: files["appsscript.json"],
	};
}
