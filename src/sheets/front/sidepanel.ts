import { tidyUp } from "../life/taketurn";
import type { View } from "../messages";

/** Opens the side panel, at one of its views when one is wanted; its page is one of the script's own files. What Google
 * makes of that page is never read back: it strips what looks like a comment. */
export function showPanel({
	view,
	job = 0,
}: {
	view?: View;
	job?: number;
}): void {
	tidyUp(SpreadsheetApp.getActiveSpreadsheet());
	const page = HtmlService.createHtmlOutputFromFile("Panel");
	if (view)
		page.append(
			`<div id="opening" data-view="${view}" data-job="${job}"></div>`,
		);
	SpreadsheetApp.getUi().showSidebar(page.setTitle("Tonefold"));
}
