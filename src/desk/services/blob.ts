/** `Blob` of the script: bytes with a kind and a name. */
import { type Call, signature } from "./call";

type Blob = GoogleAppsScript.Base.Blob;
type Methods = Pick<
	Blob,
	| "copyBlob"
	| "getBytes"
	| "getContentType"
	| "getDataAsString"
	| "getName"
	| "setContentType"
	| "setName"
>;

/** What stands behind a blob of the script. */
export interface BlobData {
	bytes: Uint8Array;
	contentType: string | null;
	name: string | null;
}

const KIND = "Blob";

/** Bytes as scripts hold them: numbers from -128 to 127. */
export function signedBytes(bytes: Uint8Array): number[] {
	return Array.from(new Int8Array(bytes));
}

const isSignedByte = (value: unknown) =>
	Number.isInteger(value) &&
	(value as number) >= -128 &&
	(value as number) < 128;

/** @throws Error for what is no list of numbers from -128 to 127. */
export function bytesOf(value: unknown, method: string): Uint8Array {
	if (!Array.isArray(value)) throw signature([value], method);
	// not every(), which passes over holes
	for (let index = 0; index < value.length; index++)
		if (!isSignedByte(value[index])) throw signature([value], method);
	return Uint8Array.from(value as number[]);
}

/** The blob behind a service object. @throws Error for anything else. */
export function blobData(call: Call, blob: unknown): BlobData {
	return call.inner<BlobData>(blob, KIND);
}

/** Charsets a script may name; the platform has more, none of them in use. */
export const CHARSETS = { US_ASCII: "US_ASCII", UTF_8: "UTF_8" } as const;

const DECODERS: Readonly<Record<string, string>> = {
	"UTF-8": "utf-8",
	UTF_8: "utf-8",
	US_ASCII: "ascii",
	"US-ASCII": "ascii",
};

export function blobService(call: Call, data: BlobData): Blob {
	const text = (value: unknown, method: string) => {
		if (value !== null && typeof value !== "string")
			throw signature([value], `${KIND}.${method}`);
		return value;
	};
	const methods: Methods = {
		copyBlob: () => blobService(call, { ...data }),
		getBytes: () => signedBytes(data.bytes),
		getContentType: () => data.contentType,
		getDataAsString(charset: unknown = null) {
			const decoder = DECODERS[String(charset ?? "UTF-8")];
			if (!decoder) throw new Error(`Unsupported charset: ${charset}`);
			return new TextDecoder(decoder).decode(data.bytes);
		},
		getName: () => data.name,
		setContentType(contentType: unknown) {
			data.contentType = text(contentType, "setContentType");
			return served;
		},
		setName(name: unknown) {
			data.name = text(name, "setName");
			return served;
		},
	};
	const served: Blob = call.serve<Blob>(KIND, methods, data);
	return served;
}
