/** A local workbook with the add-on as it is built, for the tests of this folder. */
import { bundleCode } from "../../src/build/bundle";
import { carriedTemplates } from "../../src/build/packed";
import type { Desk } from "../../src/desk/contract";
import {
	type HeadlessOptions,
	openHeadlessDesk,
} from "../../src/desk/headless";
import { registry } from "../../src/functions/index";

/** As much of the panel's page as the script looks at. */
export const PANEL = `<div id="panel"></div>${await carriedTemplates()}`;

let code: Promise<string> | undefined;

export async function openWorkbook(
	options: HeadlessOptions = {},
): Promise<Desk> {
	code ??= bundleCode(registry);
	return openHeadlessDesk("", {
		addOn: { name: "Tonefold", code: await code, pages: { Panel: PANEL } },
		enabled: true,
		...options,
	});
}
