import { crc32, deflateSync } from "node:zlib";

function chunk(type: string, data: Buffer): Buffer {
	const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
	const out = Buffer.alloc(body.length + 8);
	out.writeUInt32BE(data.length);
	body.copy(out, 4);
	out.writeUInt32BE(crc32(body), body.length + 4);
	return out;
}

/** A PNG painted by a rule, as a file has it. */
export function paintedPng(
	width: number,
	height: number,
	colorAt: (x: number, y: number) => readonly number[],
): Buffer {
	const lines = Array.from({ length: height }, (_, y) =>
		Buffer.from([
			0,
			...Array.from({ length: width }, (_, x) => colorAt(x, y)).flat(),
		]),
	);
	return encoded(width, height, Buffer.concat(lines));
}

/** A PNG of one color, in base64. @source W3C PNG (2003): 5.2 signature, 5.3 chunks, 11.2 IHDR, IDAT, IEND */
export function png(
	width: number,
	height: number,
	rgb: readonly [number, number, number],
): string {
	const line = Buffer.from([
		0,
		...Array.from({ length: width }, () => rgb).flat(),
	]);
	const lines = Array.from({ length: height }, () => line);
	return encoded(width, height, Buffer.concat(lines)).toString("base64");
}

function encoded(width: number, height: number, lines: Buffer): Buffer {
	const header = Buffer.alloc(13);
	header.writeUInt32BE(width);
	header.writeUInt32BE(height, 4);
	header.set([8, 2, 0, 0, 0], 8);
	return Buffer.concat([
		Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
		chunk("IHDR", header),
		chunk("IDAT", deflateSync(lines)),
		chunk("IEND", Buffer.alloc(0)),
	]);
}
