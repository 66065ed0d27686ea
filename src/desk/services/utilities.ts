/** `Utilities`: base64, blobs, dates as text. */
import { dateText, isDate } from "../dates";
import { newBlob } from "./blob";
import { type Call, signature } from "./call";

type Utilities = GoogleAppsScript.Utilities.Utilities;

const BASE64 =
	/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;

/** Numbers from -128 to 127. */
function decoded(encoded: unknown): number[] {
	if (typeof encoded !== "string")
		throw signature([encoded], "Utilities.base64Decode");
	if (!BASE64.test(encoded)) throw new Error("Could not decode string.");
	const bytes = Int8Array.from(atob(encoded), (letter) => letter.charCodeAt(0));
	return Array.from(bytes);
}

export function utilities(call: Call): object {
	const methods = {
		base64Decode: decoded,
		newBlob: (
			data: unknown,
			contentType: unknown = null,
			name: unknown = null,
		) => newBlob(call, data, contentType, name),
		formatDate(date: unknown, zone: unknown, pattern: unknown) {
			if (
				!isDate(date) ||
				typeof zone !== "string" ||
				typeof pattern !== "string"
			)
				throw signature([date, zone, pattern], "Utilities.formatDate");
			return dateText(date, zone, pattern);
		},
	} satisfies Partial<Record<keyof Utilities, unknown>>;
	return call.serve("Utilities", methods);
}
