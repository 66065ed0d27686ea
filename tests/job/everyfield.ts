/** Every field that a job declares, wherever it stands in the file, and a job in which each of them holds something. */

import type { Field, Fields, Typed } from "../../src/job/fields/field";
import { OPERATION_KEYS } from "../../src/job/fields/operations";
import { JOB_SHAPE, type JobFile } from "../../src/job/jobfile";
import type { Shape } from "../../src/job/mistakes";

export type Path = readonly (string | number)[];

export interface Declared {
	path: Path;
	field: Field;
}

const under = (path: Path, fields: Fields): Declared[] =>
	Object.entries(fields).map(([key, field]) => ({
		path: [...path, key],
		field,
	}));

/** Keys by which values that no field names are typed. */
const VALUE_KEYS: Readonly<Record<string, string>> = {
	doses: "Umber",
	weighed: "Water",
	steps: "1",
};

const fieldsIn = (shape: Shape, path: Path): Declared[] => [
	...under(path, shape.fields),
	...Object.entries(shape.values ?? {}).map(([key, field]) => ({
		path: [...path, key, VALUE_KEYS[key] ?? ""],
		field,
	})),
	...Object.entries(shape.rowsByKey ?? {}).flatMap(([key, fields]) =>
		under([...path, key, OPERATION_KEYS[0] ?? ""], fields),
	),
	...Object.entries(shape.lists ?? {}).flatMap(([key, { of }]) =>
		fieldsIn(of, [...path, key, 0]),
	),
];

export const JOB_FIELDS: readonly Declared[] = fieldsIn(JOB_SHAPE, []);

export const nameOf = (path: Path): string => path.join(".");

/** The value at a path. */
export const at = (file: unknown, path: Path): unknown =>
	path.reduce<unknown>(
		(part, key) => (part as Record<string, unknown> | undefined)?.[key],
		file,
	);

/** The file with this value at the path. */
export function having<T>(file: T, path: Path, value: unknown): T {
	const [key, ...rest] = path;
	if (key === undefined) return value as T;
	const part = (file ?? (typeof key === "number" ? [] : {})) as object;
	const own = having((part as Record<string, unknown>)[key], rest, value);
	return (
		Array.isArray(part)
			? Object.assign([...part], { [key]: own })
			: { ...part, [key]: own }
	) as T;
}

/** Something that the field may hold, and a new job does not begin with. */
function sample({ kind, words, limits, start }: Field): Typed {
	if (words) return words.find((word) => word !== start) ?? "";
	switch (kind) {
		case "day":
			return "2027-03-09";
		case "time":
			return "9:40";
		case "text":
			return "typed";
		default:
			return limits?.whole ? 1 : 0.0625;
	}
}

/** A job in which every declared field is typed. */
export const fullJob = (): JobFile =>
	JOB_FIELDS.reduce(
		(job, { path, field }) => having(job, path, sample(field)),
		{
			units: "metric",
			mix: "White casting mix, invented",
			pigments: ["Umber"],
		} as unknown as JobFile,
	);
