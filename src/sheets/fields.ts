/** Checks plain data against a description of it: every mistake is one sentence that names the field. */

export type Kind =
	| { is: "text" | "number" | "share" | "length" | "day"; optional?: true }
	| { is: "word"; words: readonly string[]; optional?: true }
	| { is: "rows"; of: Fields; least: number; most: number; optional?: true }
	| { is: "shares by name" }
	| { is: "anything" };

export type Fields = Readonly<Record<string, Kind>>;

/** Left out, or left blank. */
export const isAbsent = (value: unknown): boolean =>
	value === undefined ||
	value === null ||
	(typeof value === "string" && value.trim() === "");

const isObject = (value: unknown): value is Record<string, unknown> =>
	typeof value === "object" && value !== null && !Array.isArray(value);

/** A value as a sentence shows it, cut short. */
function shown(value: unknown): string {
	const text = JSON.stringify(value) ?? String(value);
	return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

const percent = (share: number): string =>
	`${Number((share * 100).toPrecision(6))}%`;

const listed = (words: readonly string[]): string =>
	words.map((word) => `"${word}"`).join(", ");

const isOptional = (kind: Kind): boolean =>
	!("of" in kind && !kind.optional) &&
	(kind.is === "anything" ||
		kind.is === "shares by name" ||
		kind.optional === true);

/** What is wrong with the fields of an object; `path` leads to it, e.g. `pieces[2].`. */
export function mistakesIn(
	value: unknown,
	fields: Fields,
	path = "",
): string[] {
	if (!isObject(value))
		return [
			`${path.replace(/\.$/, "") || "the job"} must be an object with ${Object.keys(fields).join(", ")}`,
		];
	const unknown = Object.keys(value)
		.filter((key) => !Object.keys(fields).includes(key))
		.map(
			(key) =>
				`unknown field "${path}${key}": allowed are ${Object.keys(fields).join(", ")}`,
		);
	const wrong = Object.entries(fields).flatMap(([key, kind]) =>
		fieldMistakes(value[key], kind, path + key),
	);
	return [...unknown, ...wrong];
}

function fieldMistakes(value: unknown, kind: Kind, path: string): string[] {
	if (isAbsent(value))
		return isOptional(kind) ? [] : [`missing field "${path}"`];
	if (kind.is === "rows") return rowMistakes(value, kind, path);
	if (kind.is === "shares by name") return sharesMistakes(value, path);
	const wanted = complaint(value, kind);
	return wanted ? [`"${path}" must be ${wanted}, got ${shown(value)}`] : [];
}

function rowMistakes(
	value: unknown,
	{ of, least, most }: Extract<Kind, { is: "rows" }>,
	path: string,
): string[] {
	if (!Array.isArray(value)) return [`"${path}" must be a list`];
	if (value.length < least) return [`"${path}" has no row`];
	if (value.length > most)
		return [`"${path}" has ${value.length} rows: there is room for ${most}`];
	return value.flatMap((row, index) =>
		mistakesIn(row, of, `${path}[${index}].`),
	);
}

function sharesMistakes(value: unknown, path: string): string[] {
	if (!isObject(value)) return [`"${path}" must be an object: name to share`];
	return Object.entries(value).flatMap(([name, share]) =>
		fieldMistakes(share, { is: "share", optional: true }, `${path}.${name}`),
	);
}

/** What the value must be instead, or nothing. */
function complaint(
	value: unknown,
	kind: Exclude<Kind, { is: "rows" | "shares by name" }>,
): string | undefined {
	const isNumber = typeof value === "number" && Number.isFinite(value);
	switch (kind.is) {
		case "text":
			return typeof value === "string" ? undefined : "text";
		case "number":
			return isNumber ? undefined : "a number";
		case "share":
			return shareComplaint(value);
		case "length":
			return isNumber || typeof value === "string"
				? undefined
				: "a number or a text";
		case "day":
			return typeof value === "string" && isDay(value)
				? undefined
				: "a day that exists, as yyyy-mm-dd";
		case "word":
			return typeof value === "string" && kind.words.includes(value)
				? undefined
				: `one of ${listed(kind.words)}`;
		case "anything":
			return undefined;
	}
}

function shareComplaint(value: unknown): string | undefined {
	if (typeof value !== "number" || !Number.isFinite(value))
		return "a number from 0 to 1";
	return value >= 0 && value <= 1
		? undefined
		: `between 0% and 100% (that is ${percent(value)}; write 0.08 for 8%)`;
}

function isDay(text: string): boolean {
	const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
	if (!match) return false;
	const day = new Date(`${text}T00:00:00Z`);
	return (
		!Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text
	);
}
