/** The pour card of a job, load by load, as text. */
import { messageOf } from "./bridge";
import type { Desk } from "./contract";
import { textTable } from "./print";

/** The pour card as it stands: what is in sight of its tab. */
function cardText(desk: Desk, tab: string): string {
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
	if (!sheet) throw new Error(`there is no tab ${tab}`);
	const grid = sheet.getSheet();
	const all = { rows: grid.getRowCount(), columns: grid.getColumnCount() };
	const columns = Array.from(
		{ length: all.columns },
		(_, index) => index,
	).filter((column) => grid.getColVisible(column));
	const range = sheet.getRange(0, 0, all.rows, all.columns).getA1Notation();
	const values = desk.read(tab, range);
	return textTable(
		desk.display(tab, range).map((row, index) =>
			columns.map((column) => ({
				text: row[column] ?? "",
				isNumber: typeof values[index]?.[column] === "number",
			})),
		),
	);
}

/** @throws Error where the card's choice of loads ends before the job's loads do. */
function chooseLoad(
	desk: Desk,
	chosen: { tab: string; range: string },
	load: number,
	loads: number,
): void {
	try {
		desk.type(chosen.tab, chosen.range, String(load));
	} catch (error) {
		throw new Error(
			`THE CARD IS NOT WHOLE: the job has ${loads} loads and ${chosen.tab} has room for ${load - 1}; make two jobs of it. (${messageOf(error)})`,
		);
	}
}

/** Calls `each` for every load of the job, the pour card showing it. */
export async function forEachLoad(
	desk: Desk,
	job: number,
	each: (card: string, load: number, loads: number) => void,
): Promise<void> {
	const chosen = desk.named(`job${job}_load`);
	const count = desk.named(`job${job}_loads`);
	if (!chosen || !count)
		throw new Error(`job ${job} has no pour card with loads`);
	const [[loads] = []] = desk.read(count.tab, count.range);
	if (typeof loads !== "number" || loads < 1)
		throw new Error(
			`job ${job} has no loads to print: ${count.tab}!${count.range} says ${loads || "nothing"}`,
		);
	for (let load = 1; load <= loads; load++) {
		chooseLoad(desk, chosen, load, loads);
		await desk.settle();
		each(cardText(desk, chosen.tab), load, loads);
	}
	desk.type(chosen.tab, chosen.range, "1");
	await desk.settle();
}
