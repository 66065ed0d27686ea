/** The workbook as comparable text, and as what can be kept and opened again. */
import type { Cell, Workbook } from "./book";
import type { PictureNote, SavedWorkbook } from "./contract";
import type { Host, ProtectionNote } from "./services/call";

/** What the engine's own snapshot does not hold. */
interface Beside {
	documentProperties: [string, string][];
	userProperties: [string, string][];
	protections: ProtectionNote[];
	pictures: PictureNote[];
	enabled: boolean;
}

export function besideOf(host: Host, enabled: boolean): Beside {
	return {
		documentProperties: [...host.documentProperties],
		userProperties: [...host.userProperties],
		protections: host.protections.map((note) => ({ ...note })),
		pictures: host.pictures.map((note) => ({ ...note })),
		enabled,
	};
}

/** The kept part beside the workbook; empty where there is none. */
export function besideFrom(saved: SavedWorkbook | undefined): Beside {
	const empty = {
		documentProperties: [],
		userProperties: [],
		protections: [],
		pictures: [],
		enabled: false,
	};
	return { ...empty, ...(saved?.beside as Partial<Beside> | undefined) };
}

const isEmpty = (value: unknown) =>
	value === null ||
	value === undefined ||
	(typeof value === "object" && Object.keys(value).length === 0);

/** Without what is empty, keys in order: what two equal workbooks share. */
function pruned(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(pruned);
	if (typeof value !== "object" || value === null) return value;
	return Object.fromEntries(
		Object.entries(value)
			.map(([key, item]) => [key, pruned(item)] as const)
			.filter(([, item]) => !isEmpty(item))
			.sort(([a], [b]) => (a < b ? -1 : 1)),
	);
}

/** Resources that say nothing of the workbook's contents. */
const NOT_CONTENT = "SHEET_AuthzIoMockService_PLUGIN";

/** What lies beside the cells: names, rules, choices, notes. */
export function resourcesIn(
	resources: ReturnType<Workbook["save"]>["resources"],
): unknown[] {
	return (resources ?? [])
		.filter(({ name, data }) => data && name !== NOT_CONTENT)
		.map(({ name, data }) => [name, pruned(JSON.parse(data))] as const)
		.filter(([, data]) => !isEmpty(data))
		.sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Everything that a person could notice, as text; equal texts, equal workbooks. */
export function stateOf(host: Host): string {
	const saved = host.book.workbook.save();
	const tabs = saved.sheetOrder.map((id) => {
		const { cellData = {}, ...rest } = saved.sheets[id] ?? {};
		const cells: Record<string, unknown> = {};
		for (const [row, columns] of Object.entries(cellData))
			for (const [column, cell] of Object.entries(
				(columns ?? {}) as Record<string, Cell>,
			)) {
				const style = cell?.s;
				const whole = pruned({
					...cell,
					s: typeof style === "string" ? saved.styles[style] : style,
				});
				if (!isEmpty(whole)) cells[`${row},${column}`] = whole;
			}
		return [pruned(rest), pruned(cells)];
	});
	const { enabled: _, ...beside } = besideOf(host, false);
	return JSON.stringify([tabs, resourcesIn(saved.resources), pruned(beside)]);
}
