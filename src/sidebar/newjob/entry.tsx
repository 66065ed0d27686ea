/** A field of a row as the form asks for it: what kind of entry, under which label, with which choices. */
import type { Field, Fields } from "../../job/fields/field";
import { DateField, SelectField, TextField } from "../field";
import { fieldId } from "./form";

interface EntryProps {
	field: Field;
	id: string;
	value: string;
	onChange(typed: string): void;
	/** Where it is another than the field's own. */
	label?: string;
	/** Names to choose from. */
	options?: readonly string[];
	after?: string;
	onPaste?(text: string): boolean;
}

export function Entry({ field, label, options, ...rest }: EntryProps) {
	const { kind, words, asks, required, help } = field;
	const props = { ...rest, help, label: label ?? asks ?? field.label };
	const list = options ?? words;
	if (list)
		return (
			<SelectField
				{...props}
				options={list}
				blank={required ? undefined : "not decided"}
			/>
		);
	if (kind === "day") return <DateField {...props} />;
	return (
		<TextField
			{...props}
			numeric={kind !== "text"}
			suffix={kind === "share" ? "%" : undefined}
		/>
	);
}

/** What each entry of a row is given, by the field's key. */
export const entriesOf =
	<F extends Fields>(
		fields: F,
		row: { readonly [K in keyof F]: string } & { key: number },
		change: (typed: Record<string, string>) => void,
	) =>
	(name: keyof F & string): EntryProps => ({
		field: fields[name] as Field,
		id: fieldId(row.key, name),
		value: row[name],
		onChange: (typed) => change({ [name]: typed }),
	});

/** Keys of the fields that a shape has. */
export const keysFor = <F extends Fields>(
	fields: F,
	shape: string,
): (keyof F & string)[] =>
	Object.entries(fields)
		.filter(([, { shapes }]) => !shapes || shapes.some((one) => one === shape))
		.map(([key]) => key);

/** The fields of a row that a shape has not, blank. */
export const withoutUnused = <F extends Fields>(
	fields: F,
	shape: string,
): Partial<Record<keyof F & string, string>> => {
	const used = keysFor(fields, shape);
	return Object.fromEntries(
		Object.keys(fields)
			.filter((key) => !used.includes(key))
			.map((key) => [key, ""]),
	) as Partial<Record<keyof F & string, string>>;
};
