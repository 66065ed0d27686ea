import { drawn, element } from "./elements";

/** Says what the page is doing while there is nothing to see yet. */
export async function coverSays(title: string): Promise<void> {
	element("cover-title").textContent = title;
	await drawn();
}

export function uncover(): void {
	element("cover").hidden = true;
}

/** Says why there is no workbook, and offers to load the page again. */
export function coverFails(title: string, text: string): void {
	const cover = element("cover");
	cover.hidden = false;
	cover.classList.add("failed");
	element("cover-title").textContent = title;
	element("cover-text").textContent = text;
	const again = element("try-again");
	again.hidden = false;
	again.addEventListener("click", () => location.reload());
}
