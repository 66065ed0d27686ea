/** An element of the page, which is sure to have it. */
export function element<T extends HTMLElement = HTMLElement>(id: string): T {
	const found = document.getElementById(id);
	if (!found) throw new Error(`the page has no #${id}`);
	return found as T;
}

/** A button that says what it does. */
export function button(text: string, click: () => void): HTMLButtonElement {
	const made = document.createElement("button");
	made.type = "button";
	made.className = "plain";
	made.textContent = text;
	made.addEventListener("click", click);
	return made;
}

/** Gives the browser a moment to draw what has changed. */
export function drawn(): Promise<void> {
	return new Promise((done) =>
		requestAnimationFrame(() => setTimeout(done, 0)),
	);
}

/** The sentence of anything thrown. */
export function sentence(thrown: unknown): string {
	return thrown instanceof Error ? thrown.message : String(thrown);
}
