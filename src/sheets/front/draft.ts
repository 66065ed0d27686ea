/** What a person has not finished typing in the panel: another dialog over the panel would take it away. */
import { InputError } from "../../calc/errors";

/** Google keeps what belongs to a person for all files together. */
const keyStart = (): string =>
	`draft ${SpreadsheetApp.getActiveSpreadsheet().getId()} `;
/** A property holds 9 kB, a sign may be three bytes, and one of two halves is not cut. */
const PARTS = /[\s\S]{1,3000}(?![\uDC00-\uDFFF])/g;
/** A form of 150 pieces, which is far more than anybody types. */
const MOST = 90_000;

/** Keeps the text for this person and file, in place of what was kept; `""` forgets it. Answers its length. */
export function keepDraftText(text: unknown): number {
	if (typeof text !== "string" || text.length > MOST)
		throw new InputError(
			`What is kept of the panel must be a text of at most ${MOST} letters`,
		);
	const properties = PropertiesService.getUserProperties();
	const start = keyStart();
	const parts: string[] = text.match(PARTS) ?? [];
	for (const key of properties.getKeys())
		if (
			key.startsWith(start) &&
			Number(key.slice(start.length)) >= parts.length
		)
			properties.deleteProperty(key);
	if (parts.length > 0)
		properties.setProperties(
			Object.fromEntries(parts.map((part, index) => [start + index, part])),
		);
	return text.length;
}

/** What was kept last; `""` where there is none. */
export function keptDraftText(): string {
	const start = keyStart();
	const kept = PropertiesService.getUserProperties().getProperties();
	let text = "";
	for (let part = 0; kept[start + part] !== undefined; part++)
		text += kept[start + part];
	return text;
}
