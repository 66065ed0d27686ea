/** A local workbook with the add-on as it is built, for the tests of this folder. */
import { bundleCode, bundleTemplates } from "../../src/build/bundle";
import { addOnOf } from "../../src/desk/addon-files";
import type { AddOn, Desk, SavedWorkbook } from "../../src/desk/contract";
import {
	type HeadlessOptions,
	openHeadlessDesk,
} from "../../src/desk/headless";
import { registry } from "../../src/functions/index";

/** As much of the panel's page as a workbook without a browser needs. */
const PANEL = '<div id="panel"></div>';

let built: Promise<AddOn> | undefined;

async function bundled(): Promise<AddOn> {
	const [code, templates] = await Promise.all([
		bundleCode(registry),
		bundleTemplates(),
	]);
	return addOnOf({
		"Code.js": code,
		"Templates.js": templates,
		"Panel.html": PANEL,
	});
}

export function builtAddOn(): Promise<AddOn> {
	built ??= bundled();
	return built;
}

export async function openWorkbook(
	options: HeadlessOptions = {},
): Promise<Desk> {
	return openHeadlessDesk("", {
		addOn: await builtAddOn(),
		enabled: true,
		...options,
	});
}

let demo: Promise<SavedWorkbook> | undefined;

async function makeDemo(): Promise<SavedWorkbook> {
	const desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
	const saved = desk.save();
	desk.dispose();
	return saved;
}

/** A workbook with the studio and the demo job in it. */
export function savedDemo(): Promise<SavedWorkbook> {
	demo ??= makeDemo();
	return demo;
}
