/** Where the open workbook differs from a kept one: told in a small part of the time that a text of all of it takes. */
import {
	IResourceManagerService,
	type IWorkbookData,
	UniverInstanceType,
} from "@univerjs/core";
import type { SavedWorkbook } from "./contract";
import { partOf } from "./engine-private";
import type { Host } from "./services/call";
import { besideFrom, besideOf, resourcesIn } from "./state";

type Part = Readonly<Record<string, unknown>>;
type Sheets = Pick<IWorkbookData, "sheetOrder" | "sheets" | "styles">;
type Cells = Readonly<Record<string, Readonly<Record<string, Part>>>>;

const NOTHING: Part = {};
const isPart = (value: unknown): value is Part =>
	typeof value === "object" && value !== null;

/** The path of the first difference; what is empty is as if it were not there. */
function difference(a: unknown, b: unknown, path: string): string | undefined {
	if (a === b) return undefined;
	const [one, other] = [a ?? NOTHING, b ?? NOTHING];
	if (!isPart(one) || !isPart(other)) return one === other ? undefined : path;
	if (Array.isArray(one) && Array.isArray(other) && one.length !== other.length)
		return path;
	return (
		inParts(one, other, path) ??
		inParts(other, one, path, (key) => !(key in one))
	);
}

function inParts(
	one: Part,
	other: Part,
	path: string,
	isAsked: (key: string) => boolean = () => true,
): string | undefined {
	for (const key in one) {
		if (one[key] === other[key] || !isAsked(key)) continue;
		const found = difference(one[key], other[key], `${path} ${key}`);
		if (found) return found;
	}
	return undefined;
}

/** What a formula is and not what it shows. */
const formulaOf = ({ v: _, t: __, custom: ___, ...cell }: Part): Part => cell;

/** Cells with the formats that their styles stand for; an id that both have is looked up once. */
function cellComparer(kept: Sheets, now: Sheets, butShown: boolean) {
	const same = new Set<unknown>();
	const styled = ({ styles }: Sheets, cell: Part = NOTHING): Part =>
		typeof cell.s === "string" ? { ...cell, s: styles[cell.s] } : cell;
	return (a: Part | undefined, b: Part | undefined, path: string) => {
		if (butShown && a?.f && a.f === b?.f)
			return difference(
				formulaOf(styled(kept, a)),
				formulaOf(styled(now, b)),
				path,
			);
		if (a?.s === b?.s && same.has(a?.s)) return difference(a, b, path);
		const found = difference(styled(kept, a), styled(now, b), path);
		if (!found && a?.s === b?.s) same.add(a?.s);
		return found;
	};
}

function inCells(
	kept: Cells,
	now: Cells,
	compare: ReturnType<typeof cellComparer>,
	path: string,
): string | undefined {
	for (const row of new Set([...Object.keys(kept), ...Object.keys(now)])) {
		const [one = NOTHING, other = NOTHING] = [kept[row], now[row]];
		for (const column in { ...one, ...other }) {
			const [a, b] = [one[column], other[column]] as (Part | undefined)[];
			const found = compare(a, b, `${path} ${row},${column}`);
			if (found) return found;
		}
	}
	return undefined;
}

function inTabs(
	kept: Sheets,
	now: Sheets,
	butShown: boolean,
): string | undefined {
	const compare = cellComparer(kept, now, butShown);
	for (const id of now.sheetOrder) {
		const { cellData: before = {}, ...one } = kept.sheets[id] ?? {};
		const { cellData: after = {}, ...other } = now.sheets[id] ?? {};
		const path = String(other.name);
		const found =
			difference(one, other, path) ??
			inCells(before as Cells, after as Cells, compare, path);
		if (found) return found;
	}
	return undefined;
}

function resourcesNow({ book }: Host): IWorkbookData["resources"] {
	return partOf(book.engine, IResourceManagerService).getResources(
		book.workbook.getId(),
		UniverInstanceType.UNIVER_SHEET,
	);
}

/** The first difference as a path: of its tab and cell, or of what lies beside the cells. */
export function differenceFrom(
	saved: SavedWorkbook,
	host: Host,
	butShown: boolean,
): string | undefined {
	const kept = saved.workbook as IWorkbookData;
	const now = host.book.workbook.getWorkbook().getSnapshot();
	const { enabled: _, ...before } = besideFrom(saved);
	const { enabled: __, ...after } = besideOf(host, false);
	return (
		difference(kept.sheetOrder, now.sheetOrder, "tabs") ??
		inTabs(kept, now, butShown) ??
		difference(
			resourcesIn(kept.resources),
			resourcesIn(resourcesNow(host)),
			"beside the cells",
		) ??
		difference(before, after, "beside the workbook")
	);
}
