import { day, money, number, type Row, text } from "./field";

/** What lies on the shelf of one lot. */
export const STOCK = {
	material: text("Material", { required: true }),
	onHand: number("On hand"),
	unit: text("Unit"),
	lot: text("Lot"),
	opened: day("Opened"),
	pack: number("Pack", {}, { above: 0 }),
	packPrice: money("Pack price"),
	remark: text("Remark"),
};

export type StockRow = Row<typeof STOCK>;
