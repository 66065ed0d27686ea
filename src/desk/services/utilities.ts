/** `Utilities`: base64, blobs, gzip. */
import { gunzipSync, gzipSync } from "fflate";
import {
	type BlobData,
	blobData,
	blobService,
	bytesOf,
	CHARSETS,
	signedBytes,
} from "./blob";
import { type Call, signature } from "./call";

type Utilities = GoogleAppsScript.Utilities.Utilities;
type Blob = GoogleAppsScript.Base.Blob;

const GZIP = "application/x-gzip";
const BASE64 =
	/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;
const CHUNK = 0x8000;

let uuids = 0;

function base64Of(bytes: Uint8Array): string {
	let binary = "";
	// a call takes only so many arguments
	for (let start = 0; start < bytes.length; start += CHUNK)
		binary += String.fromCharCode(...bytes.subarray(start, start + CHUNK));
	return btoa(binary);
}

/**
 * Bytes of a text that is to be encoded.
 *
 * From memory: without a charset a letter outside ASCII becomes a question mark there; here it is refused.
 */
function encodedText(text: string, charset: unknown): Uint8Array {
	if (charset !== CHARSETS.UTF_8 && /[^\0-\x7f]/.test(text))
		throw new Error(
			"Utilities.base64Encode of a text outside ASCII needs Utilities.Charset.UTF_8.",
		);
	return new TextEncoder().encode(text);
}

function unpacked(data: BlobData): Uint8Array {
	// from memory: a blob of another kind is refused
	if (data.contentType !== GZIP)
		throw new Error(
			`Blob object must have content type ${GZIP} for this operation.`,
		);
	try {
		return gunzipSync(data.bytes);
	} catch {
		throw new Error("Could not decompress gzip.");
	}
}

function compression(call: Call) {
	return {
		gzip(blob: unknown, name: unknown = null) {
			const data = blobData(call, blob);
			if (data.contentType === null)
				throw new Error(
					"Blob object must have non-null content type for this operation.",
				);
			return blobService(call, {
				bytes: gzipSync(data.bytes, { mtime: 0 }),
				contentType: GZIP,
				name: typeof name === "string" ? name : "archive.gz",
			});
		},
		ungzip(blob: unknown) {
			const data = blobData(call, blob);
			return blobService(call, {
				bytes: unpacked(data),
				contentType: null,
				name: data.name?.replace(/\.gz$/, "") ?? null,
			});
		},
	};
}

function base64() {
	return {
		base64Decode(encoded: unknown) {
			if (typeof encoded !== "string")
				throw signature([encoded], "Utilities.base64Decode");
			if (!BASE64.test(encoded)) throw new Error("Could not decode string.");
			return signedBytes(
				Uint8Array.from(atob(encoded), (letter) => letter.charCodeAt(0)),
			);
		},
		base64Encode: (data: unknown, charset: unknown = null) =>
			base64Of(
				typeof data === "string"
					? encodedText(data, charset)
					: bytesOf(data, "Utilities.base64Encode"),
			),
	};
}

function newBlob(
	call: Call,
	data: unknown,
	contentType: unknown,
	name: unknown,
): Blob {
	const isText = typeof data === "string";
	const strange = [contentType, name].some(
		(word) => word !== null && typeof word !== "string",
	);
	if (strange) throw signature([data, contentType, name], "Utilities.newBlob");
	return blobService(call, {
		bytes: isText
			? new TextEncoder().encode(data)
			: bytesOf(data, "Utilities.newBlob"),
		contentType:
			(contentType as string | null) ?? (isText ? "text/plain" : null),
		name: name as string | null,
	});
}

export function utilities(call: Call): object {
	const methods = {
		Charset: CHARSETS,
		...base64(),
		...compression(call),
		newBlob: (
			data: unknown,
			contentType: unknown = null,
			name: unknown = null,
		) => newBlob(call, data, contentType, name),
		// counted, so that a run can be repeated
		getUuid: () =>
			`00000000-0000-4000-8000-${String(++uuids).padStart(12, "0")}`,
		sleep: () => null,
	} satisfies Partial<Record<keyof Utilities, unknown>>;
	return call.serve("Utilities", methods);
}
