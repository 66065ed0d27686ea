import { addOnOf } from "../addon-files";
import type { AddOn } from "../contract";

async function text(path: string): Promise<string> {
	const answer = await fetch(path);
	if (!answer.ok) throw new Error(`${path} could not be read`);
	return answer.text();
}

/** Texts of the built files, by name. */
async function builtFiles(): Promise<Record<string, string>> {
	const names: string[] = JSON.parse(await text("add-on.json"));
	const files = names.map(
		async (name) =>
			[name, await text(`add-on/${encodeURIComponent(name)}`)] as const,
	);
	return Object.fromEntries(await Promise.all(files));
}

/**
 * The built add-on, as the desk's server hands it out.
 *
 * @throws Error when it has not been built.
 */
export async function fetchAddOn(): Promise<AddOn> {
	const files = await builtFiles();
	if (files["Code.js"] === undefined)
		throw new Error("The built files are missing: run npm run build.");
	return addOnOf(files);
}

/** The script that gives the panel's page its `google.script`. */
export const fetchRunner = (): Promise<string> => text("runner.js");
