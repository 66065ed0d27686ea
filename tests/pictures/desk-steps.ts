/** Steps of a person at the desk who takes pictures. */
import type { Page } from "playwright-core";
import { chooseInMenu, panelOf } from "../desk/page/visit";

export async function show(
	page: Page,
	tab: string,
	cell: string,
): Promise<void> {
	await page.evaluate(
		([tab = "", cell = ""]) => window.desk?.select(tab, cell),
		[tab, cell],
	);
}

/** Opens the panel, and goes to one of its parts where one is named. */
export async function panelAt(page: Page, part?: string): Promise<void> {
	await chooseInMenu(page, "Open the panel");
	if (part) await panelOf(page).getByRole("tab", { name: part }).click();
}
