/** Lets a cell of the engine call a function of the script by the rules of Sheets. */
import type { Nullable } from "@univerjs/core";
import {
	ArrayValueObject,
	BaseFunction,
	type BaseReferenceObject,
	type BaseValueObject,
	BooleanValueObject,
	ErrorType,
	ErrorValueObject,
	type FunctionVariantType,
	NumberValueObject,
	StringValueObject,
} from "@univerjs/engine-formula";
import type { EngineFunction } from "./contract";
import { dateOf, isDate, isDatePattern, serialOf } from "./dates";

/** The cell that is being calculated. */
export interface Caller {
	sheetId: string;
	row: number;
	column: number;
}

/** Calls the script's function; throws what it throws. */
type Invoke = (name: string, args: unknown[], caller: Caller) => unknown;

const LONGEST_TEXT = 50_000;

/** What Google shows for a spill that finds no room. */
export const shownError = (text: string) =>
	text === "#SPILL!" ? "#REF!" : text;

function plainValue(value: Nullable<BaseValueObject>): unknown {
	if (!value || value.isNull()) return "";
	if (value.isError()) return shownError(String(value.getValue()));
	if (value.isNumber() && value.isDateFormat())
		return dateOf(Number(value.getValue()));
	return value.getValue();
}

const unwrapped = (rows: unknown[][]) =>
	rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;

function plainReference(reference: BaseReferenceObject): unknown {
	const { startRow, startColumn } = reference.getRangePosition();
	const unit = reference.getUnitId();
	const sheet = reference.getSheetId();
	// a value calculated in the same pass carries no format: the cell's own decides whether it is a date
	const dated = (row: number, column: number) =>
		isDatePattern(
			reference.getCellPattern(
				unit,
				sheet,
				startRow + row,
				startColumn + column,
			),
		);
	const rows = reference.toArrayValueObject(false).getArrayValue();
	return unwrapped(
		rows.map((cells, row) =>
			Array.from(cells, (cell, column) => {
				const value = plainValue(cell);
				return typeof value === "number" && dated(row, column)
					? dateOf(value)
					: value;
			}),
		),
	);
}

/** An argument as Sheets passes it: one cell a scalar, a range rows, blank `""`, an error its text. */
export function plainArgument(variant: FunctionVariantType): unknown {
	if (variant.isReferenceObject())
		return plainReference(variant as BaseReferenceObject);
	if (variant.isArray())
		return unwrapped(
			(variant as ArrayValueObject)
				.getArrayValue()
				.map((cells) => Array.from(cells, plainValue)),
		);
	return plainValue(variant as BaseValueObject);
}

function cellResult(name: string, value: unknown): BaseValueObject {
	if (value === undefined || value === null)
		return StringValueObject.create("");
	if (isDate(value))
		return NumberValueObject.create(serialOf(value), "yyyy-mm-dd");
	if (typeof value === "boolean") return BooleanValueObject.create(value);
	if (typeof value === "number")
		return Number.isFinite(value)
			? NumberValueObject.create(value)
			: ErrorValueObject.create(ErrorType.NUM);
	if (typeof value !== "string")
		throw new Error(`${name} answered ${typeof value}, which no cell can hold`);
	if (value.length > LONGEST_TEXT)
		throw new Error(
			`Text result of ${name} is longer than the limit of ${LONGEST_TEXT} characters.`,
		);
	return StringValueObject.create(value);
}

function arrayResult(name: string, answer: unknown[]): ArrayValueObject {
	const rows = answer.map((row) => (Array.isArray(row) ? row : [row]));
	const width = rows[0]?.length ?? 0;
	if (width === 0) throw new Error(`${name} answered an empty array`);
	if (rows.some((row) => row.length !== width))
		throw new Error(`${name} answered rows of different lengths`);
	return ArrayValueObject.create({
		calculateValueList: rows.map((row) =>
			row.map((cell) => cellResult(name, cell)),
		),
		rowCount: rows.length,
		columnCount: width,
		unitId: "",
		sheetId: "",
		row: -1,
		column: -1,
	});
}

/** An answer as Sheets shows it; a list goes down, rows spill. */
function engineResult(name: string, answer: unknown): BaseValueObject {
	return Array.isArray(answer)
		? arrayResult(name, answer)
		: cellResult(name, answer);
}

/** A function class of the engine that calls the script's function of that name. */
export function bridged(
	name: string,
	invoke: Invoke,
	enabled: () => boolean,
	failed: (name: string, caller: Caller, message: string | undefined) => void,
): EngineFunction {
	class Bridged extends BaseFunction {
		override minParams = 0;
		override maxParams = 255;
		override needsReferenceObject = true;
		override calculate(...variants: BaseValueObject[]) {
			if (!enabled()) return ErrorValueObject.create(ErrorType.NAME);
			const caller = {
				sheetId: this.subUnitId ?? "",
				row: this.row,
				column: this.column,
			};
			try {
				const answer = invoke(name, variants.map(plainArgument), caller);
				const result = engineResult(name, answer);
				failed(name, caller, undefined);
				return result;
			} catch (error) {
				const message = messageOf(error);
				failed(name, caller, message);
				return ErrorValueObject.create(ErrorType.ERROR, message);
			}
		}
	}
	// to a formula, upper and lower case are one
	return [Bridged, name.toUpperCase()];
}

/** The sentence in whatever was thrown; the error may come from another script context. */
export function messageOf(error: unknown): string {
	const message = (error as { message?: unknown } | null)?.message;
	return typeof message === "string" ? message : String(error);
}

/** `ARRAYFORMULA` passes its argument on: ranges spill here without it. */
export function arrayFormula(): EngineFunction {
	class PassOn extends BaseFunction {
		override minParams = 1;
		override maxParams = 1;
		override calculate(value: BaseValueObject) {
			return value;
		}
	}
	return [PassOn, "ARRAYFORMULA"];
}
