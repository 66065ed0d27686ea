/** Fields that begin with a value: blank, they count as it. */
import type { Field, Fields, Read, Row, Typed } from "../fields/field";
import { isBlank } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import { type Known, readField } from "./known";

export function startOf(
	{ start = "" }: Field,
	units: UnitSystem,
): Typed | undefined {
	return typeof start === "object" ? start[units] : start;
}

/** One field of a record, or what it begins with. */
export const readStarted = <F extends Fields, K extends keyof F & string>(
	fields: F,
	key: K,
	row: Row<F>,
	units: UnitSystem,
): Known<Exclude<Read<F>[K], undefined>> =>
	readField(
		fields,
		key,
		isBlank(row[key])
			? { ...row, [key]: startOf(fields[key] as Field, units) }
			: row,
		units,
	);
