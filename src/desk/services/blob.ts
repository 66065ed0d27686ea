/** `Blob` of the script: bytes with a kind. The add-on makes them and passes them on; it asks them nothing. */
import { type Call, signature } from "./call";

type Blob = GoogleAppsScript.Base.Blob;

/** What stands behind a blob of the script. */
export interface BlobData {
	bytes: Uint8Array;
	contentType: string | null;
}

const KIND = "Blob";

const isSignedByte = (value: unknown) =>
	Number.isInteger(value) &&
	(value as number) >= -128 &&
	(value as number) < 128;

/** Bytes as scripts hold them, numbers from -128 to 127; undefined for anything else. */
function bytesOf(value: unknown): Uint8Array | undefined {
	if (!Array.isArray(value)) return undefined;
	// not every(), which passes over holes
	for (let index = 0; index < value.length; index++)
		if (!isSignedByte(value[index])) return undefined;
	return Uint8Array.from(value as number[]);
}

/** `(bytes, kind, name)`. The platform takes a text for bytes too; the desk does not, and keeps no name. */
export function newBlob(
	call: Call,
	data: unknown,
	contentType: unknown,
	name: unknown,
): Blob {
	const bytes = bytesOf(data);
	const strange = [contentType, name].some(
		(word) => word !== null && typeof word !== "string",
	);
	if (!bytes || strange)
		throw signature([data, contentType, name], "Utilities.newBlob");
	const behind: BlobData = { bytes, contentType: contentType as string | null };
	return call.serve<Blob>(KIND, {}, behind);
}

/** The blob behind a service object. @throws Error for anything else. */
export function blobData(call: Call, blob: unknown): BlobData {
	return call.inner<BlobData>(blob, KIND);
}
