/** Opens the side panel; its page is one of the script's own files. */
export function showPanel(): void {
	SpreadsheetApp.getUi().showSidebar(
		HtmlService.createHtmlOutputFromFile("Panel").setTitle("Tonefold"),
	);
}
