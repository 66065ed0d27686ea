/**
 * A workbook as an .xlsx file, and the values of one read again.
 *
 * @source ECMA-376 part 1, 18.2 (workbook), 18.3 (sheets), 18.4 (shared strings); formulas are en-US there: 18.17
 */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { cellA1 } from "../../src/desk/a1";
import type { BookCell, BookData, Shown } from "./cells";

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE =
	"http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

const escaped = (text: string) =>
	text
		.replace(/&/g, "&amp;")
		.replace(/</g, "&lt;")
		.replace(/>/g, "&gt;")
		.replace(/"/g, "&quot;");

/** Functions that came after the first edition of the format are written with a prefix. */
const LATER = /\b(TEXTJOIN|CONCAT|IFS|SWITCH|MAXIFS|MINIFS)\(/g;

/** Sheets writes what other programs have not as a function of no meaning, with what the cell holds beside it. */
const drawn = (formula: string) =>
	/\bSPARKLINE\(/.test(formula)
		? `IFERROR(__xludf.DUMMYFUNCTION("${formula.replace(/"/g, '""')}"),"")`
		: formula;

const inFile = (formula: string) =>
	drawn(formula)
		.replace(/\bARRAYFORMULA\(/g, "(")
		.replace(LATER, "_xlfn.$1(");

function formulaElement(cell: BookCell, formula: string): string {
	const { rows, columns } = cell.fills;
	const isArray = rows * columns > 1 || /\bARRAYFORMULA\(/.test(formula);
	const first = cellA1(cell.row, cell.column);
	const last = cellA1(cell.row + rows - 1, cell.column + columns - 1);
	const kind = isArray ? ` t="array" ref="${first}:${last}"` : "";
	return `<f${kind}>${escaped(inFile(formula))}</f>`;
}

function valueElements(shown: Shown): { type: string; inner: string } {
	if (typeof shown === "number") return { type: "n", inner: `<v>${shown}</v>` };
	if (typeof shown === "boolean")
		return { type: "b", inner: `<v>${shown ? 1 : 0}</v>` };
	// an empty text is something else than a blank cell, and only a formula can say so
	if (shown === "") return { type: "str", inner: '<f>""</f>' };
	if (/^#[A-Z/0]+[!?A]$/.test(shown))
		return { type: "e", inner: `<v>${shown}</v>` };
	return {
		type: "inlineStr",
		inner: `<is><t xml:space="preserve">${escaped(shown)}</t></is>`,
	};
}

function cellElement(cell: BookCell, isFormula: boolean): string {
	const at = cellA1(cell.row, cell.column);
	// without a value beside it a formula is calculated when the file is opened
	if (isFormula && cell.formula)
		return `<c r="${at}">${formulaElement(cell, cell.formula)}</c>`;
	const { type, inner } = valueElements(cell.shown);
	return `<c r="${at}" t="${type}">${inner}</c>`;
}

function sheetXml(
	cells: readonly BookCell[],
	asFormula: (cell: BookCell) => boolean,
): string {
	const rows = new Map<number, BookCell[]>();
	for (const cell of cells)
		rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
	const lines = [...rows].map(
		([row, line]) =>
			`<row r="${row + 1}">${line.map((cell) => cellElement(cell, asFormula(cell))).join("")}</row>`,
	);
	return `${XML}<worksheet xmlns="${MAIN}"><sheetData>${lines.join("")}</sheetData></worksheet>`;
}

function workbookXml({ tabs, names }: BookData): string {
	const sheets = tabs.map(
		({ name }, index) =>
			`<sheet name="${escaped(name)}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
	);
	const defined = names.map(
		({ name, refersTo }) =>
			`<definedName name="${name}">${escaped(refersTo)}</definedName>`,
	);
	return `${XML}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets.join("")}</sheets><definedNames>${defined.join("")}</definedNames></workbook>`;
}

const relation = (id: number, type: string, target: string) =>
	`<Relationship Id="rId${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
const relations = (list: string[]) =>
	`${XML}<Relationships xmlns="${PACKAGE}/relationships">${list.join("")}</Relationships>`;

/** The file; cells that are not to be formulas stand in it as the values they show, and so does what a formula fills. */
export function xlsxFile(
	data: BookData,
	asFormula: (cell: BookCell) => boolean,
): Uint8Array {
	const sheets = data.tabs.map(({ cells }) => sheetXml(cells, asFormula));
	const parts = sheets.map(
		(_, index) =>
			`<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ContentType="${TYPE}.worksheet+xml"/>`,
	);
	const files: Record<string, string> = {
		"[Content_Types].xml": `${XML}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/>${parts.join("")}</Types>`,
		"_rels/.rels": relations([
			relation(1, "officeDocument", "xl/workbook.xml"),
		]),
		"xl/workbook.xml": workbookXml(data),
		"xl/_rels/workbook.xml.rels": relations(
			sheets.map((_, index) =>
				relation(index + 1, "worksheet", `worksheets/sheet${index + 1}.xml`),
			),
		),
	};
	sheets.forEach((xml, index) => {
		files[`xl/worksheets/sheet${index + 1}.xml`] = xml;
	});
	return zipSync(
		Object.fromEntries(
			Object.entries(files).map(([name, text]) => [name, strToU8(text)]),
		),
	);
}

const unescaped = (text: string) =>
	text
		.replace(/&lt;/g, "<")
		.replace(/&gt;/g, ">")
		.replace(/&quot;/g, '"')
		.replace(/&apos;/g, "'")
		.replace(/&amp;/g, "&");

const textIn = (xml: string) =>
	[...xml.matchAll(/<t[^>]*>([^<]*)<\/t>/g)]
		.map(([, text = ""]) => unescaped(text))
		.join("");

/** Values by tab and cell of a file that a spreadsheet program has written. */
export function readXlsx(file: Uint8Array): Map<string, Map<string, Shown>> {
	const parts = unzipSync(file);
	const xml = (name: string) => strFromU8(parts[name] ?? new Uint8Array());
	const shared = [
		...xml("xl/sharedStrings.xml").matchAll(/<si>(.*?)<\/si>/gs),
	].map(([, inner = ""]) => textIn(inner));
	const shownIn = (type: string | undefined, inner: string): Shown => {
		const [, v = ""] = /<v>([^<]*)<\/v>/.exec(inner) ?? [];
		if (type === "s") return shared[Number(v)] ?? "";
		if (type === "inlineStr") return textIn(inner);
		if (type === "b") return v === "1";
		if (type === "str" || type === "e") return unescaped(v);
		return v === "" ? "" : Number(v);
	};
	const names = [
		...xml("xl/workbook.xml").matchAll(/<sheet name="([^"]*)"/g),
	].map(([, name = ""]) => unescaped(name));
	return new Map(
		names.map((name, index) => {
			const cells = [
				...xml(`xl/worksheets/sheet${index + 1}.xml`).matchAll(
					/<c r="([A-Z]+\d+)"([^>]*?)(?:\/>|>(.*?)<\/c>)/gs,
				),
			].map(([, at = "", attributes = "", inner = ""]) => {
				const [, type] = /\bt="(\w+)"/.exec(attributes) ?? [];
				return [at, shownIn(type, inner)] as const;
			});
			return [name, new Map(cells)];
		}),
	);
}
