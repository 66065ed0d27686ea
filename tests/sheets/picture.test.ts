/** A picture on the Quote: as large as its place allows, and no larger. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { png } from "../desk/png";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

// Its place is 15 rows of 21 pixels: 315 high.
test.each([
	["a round table is made smaller", [560, 560], [315, 315]],
	["a long bar stays as it is", [560, 150], [560, 150]],
	["a tall piece keeps its proportion", [400, 630], [200, 315]],
])(
	"%s",
	async (_, [width = 0, height = 0], shown) => {
		const picture = png(width, height, [200, 190, 180]);
		await desk.call("putPicture", [1, `data:image/png;base64,${picture}`]);
		const put = desk.pictures("1 Quote");
		expect(put.map(({ width, height }) => [width, height])).toEqual([shown]);
		expect(put[0]).toMatchObject({ row: 30, column: 1 });
	},
	60_000,
);

test("a drawing lies on the Mold tab, the place of 23 rows its height at most, and takes the place of an earlier one", async () => {
	for (const [width, height, shown] of [
		[600, 400, [600, 400]],
		[700, 966, [350, 483]],
	] as const) {
		const drawing = png(width, height, [255, 255, 255]);
		await desk.call("putDrawing", [1, `data:image/png;base64,${drawing}`]);
		const put = desk.pictures("1 Mold");
		expect(put.map(({ width, height }) => [width, height])).toEqual([shown]);
		expect(put[0]).toMatchObject({ row: 7, column: 1 });
	}
	expect(desk.pictures("1 Quote")).toHaveLength(1);
}, 60_000);
