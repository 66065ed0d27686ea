/** Width and height of a picture, in pixels, out of its own bytes. */

export interface Size {
	width: number;
	height: number;
}

const starts = (bytes: Uint8Array, ...first: number[]) =>
	first.every((byte, index) => bytes[index] === byte);

/** Start-of-frame markers, without the tables (C4, C8, CC) that lie between them. */
const isFrame = (marker: number) =>
	marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** @source ITU-T T.81 (1992), B.1.1 and B.2.2: segments of marker, length, and in a frame precision, lines, samples */
function jpegSize(view: DataView): Size | undefined {
	let at = 2;
	while (at + 9 < view.byteLength && view.getUint8(at) === 0xff) {
		if (isFrame(view.getUint8(at + 1)))
			return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
		at += 2 + view.getUint16(at + 2);
	}
	return undefined;
}

/**
 * Undefined for what is neither PNG, GIF nor JPEG.
 *
 * @source W3C PNG (2003) 5.2 and 11.2.2: IHDR stands first, width at byte 16; GIF89a (1990) 18: width at byte 6
 */
export function imageSize(bytes: Uint8Array): Size | undefined {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	if (starts(bytes, 0x89, 0x50, 0x4e, 0x47) && bytes.length >= 24)
		return { width: view.getUint32(16), height: view.getUint32(20) };
	if (starts(bytes, 0x47, 0x49, 0x46) && bytes.length >= 10)
		return { width: view.getUint16(6, true), height: view.getUint16(8, true) };
	return starts(bytes, 0xff, 0xd8) ? jpegSize(view) : undefined;
}
