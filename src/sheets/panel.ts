import type { View } from "./messages";

const PLACE = '<div id="panel"';

/** Opens the side panel, at one of its views when one is wanted; its page is one of the script's own files. */
export function showPanel({
	view,
	job = 0,
}: {
	view?: View;
	job?: number;
}): void {
	const page = HtmlService.createHtmlOutputFromFile("Panel");
	if (view)
		page.setContent(
			page
				.getContent()
				.replace(PLACE, `${PLACE} data-view="${view}" data-job="${job}"`),
		);
	SpreadsheetApp.getUi().showSidebar(page.setTitle("Tonefold"));
}
