/** `HYPERLINK`: the cell shows its label; where the link leads is kept beside it. */
import {
	type ArrayValueObject,
	BaseFunction,
	type BaseValueObject,
	StringValueObject,
} from "@univerjs/engine-formula";
import type { Caller } from "./bridge";
import type { EngineFunction } from "./contract";

export interface Links {
	/** In place of the engine's own function, whose answer is a text that only its grid can show. */
	engineFunction: EngineFunction;
	/** Where the link in a cell leads, as it was calculated last. */
	at(cell: Caller): string | undefined;
}

const key = ({ sheetId, row, column }: Caller) => `${sheetId}:${row}:${column}`;

const single = (value: BaseValueObject): BaseValueObject =>
	value.isArray() ? (value as ArrayValueObject).getFirstCell() : value;

/** The tab and cells that an address within the file leads to (`#gid=12`, `#gid=12&range=B5`), by the tab's number. */
export function placeInFile(
	address: string,
): { number: number; range: string } | undefined {
	const found = /^#gid=(\d+)(?:&range=([A-Z]+\d+(?::[A-Z]+\d+)?))?$/.exec(
		address,
	);
	return found?.[1] === undefined
		? undefined
		: { number: Number(found[1]), range: found[2] ?? "A1" };
}

export function links(): Links {
	const found = new Map<string, string>();
	class Hyperlink extends BaseFunction {
		override minParams = 1;
		override maxParams = 2;
		override calculate(address: BaseValueObject, label?: BaseValueObject) {
			const to = single(address);
			if (to.isError()) return to;
			const caller = {
				sheetId: this.subUnitId ?? "",
				row: this.row,
				column: this.column,
			};
			found.set(key(caller), String(to.getValue()));
			return label ?? StringValueObject.create(String(to.getValue()));
		}
	}
	return {
		engineFunction: [Hyperlink, "HYPERLINK"],
		at: (cell) => found.get(key(cell)),
	};
}
