/** The built script over a small plan: only the templates are others. */
import { TEMPLATES } from "../../../src/build/stubs";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import type { HeadlessOptions } from "../../../src/desk/headless";
import { builtAddOn, openWorkbook } from "../workbook";
import { smallWorkbook } from "./plan";

const templates = `function ${TEMPLATES}() { return { workbook: () => (${JSON.stringify(smallWorkbook)}) }; }`;

export async function openSmall(options: HeadlessOptions = {}): Promise<Desk> {
	const built = await builtAddOn();
	const code = built.code.replace(
		new RegExp(`^function ${TEMPLATES}\\(\\) \\{\\n[\\s\\S]*?^\\}\\n`, "m"),
		templates,
	);
	if (code === built.code) throw new Error("The templates were not replaced");
	return openWorkbook({ addOn: { ...built, code }, ...options });
}

/** A workbook with the small studio and its one job. */
export async function smallStudio(): Promise<SavedWorkbook> {
	const desk = await openSmall();
	await desk.call("createDemoJob", ["metric"]);
	const saved = desk.save();
	desk.dispose();
	return saved;
}
