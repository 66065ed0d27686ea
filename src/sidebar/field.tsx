/** One labeled field: what is typed, its unit, and what is wrong with it. */
import type { ComponentChildren } from "preact";
import { useContext } from "preact/hooks";
import { MarksContext, Mistake } from "./mistake";

interface FieldProps {
	id: string;
	label: string;
	value: string;
	onChange(value: string): void;
	/** Unit shown after the field, e.g. `%`. */
	suffix?: string;
	/** What comes out of it, e.g. grams. */
	after?: string;
	/** Shown while the pointer rests on it, and read by a screen reader. */
	help?: string;
}

interface InputProps extends FieldProps {
	/** Numbers and formulas run left to right whatever is typed. */
	numeric?: boolean;
	onPaste?(text: string): boolean;
}

export function TextField(props: InputProps) {
	const { id, value, onChange, onPaste, suffix, numeric, help } = props;
	const marks = useContext(MarksContext);
	return (
		<Labeled {...props}>
			<span class="with-suffix">
				<input
					{...describedBy(id, marks.at(id), suffix)}
					type="text"
					title={help}
					value={value}
					autocomplete="off"
					spellcheck={false}
					dir={numeric ? "ltr" : "auto"}
					onInput={(event) => onChange(event.currentTarget.value)}
					onBlur={() => value.trim() !== "" && marks.left(id)}
					onPaste={(event) => {
						const text = event.clipboardData?.getData("text/plain") ?? "";
						if (onPaste?.(text)) event.preventDefault();
					}}
				/>
				{suffix && (
					<span class="suffix" id={`${id}-unit`}>
						{suffix}
					</span>
				)}
			</span>
		</Labeled>
	);
}

export function DateField(props: FieldProps) {
	return (
		<Labeled {...props}>
			<input
				id={props.id}
				type="date"
				value={props.value}
				onInput={(event) => props.onChange(event.currentTarget.value)}
			/>
		</Labeled>
	);
}

interface SelectProps extends FieldProps {
	options: readonly string[];
	/** Shown for the blank choice. */
	blank?: string;
}

/** A value that is none of the options is kept and shown, so that its mistake can be seen. */
export function SelectField(props: SelectProps) {
	const { id, value, options, blank, onChange, help } = props;
	const marks = useContext(MarksContext);
	const known = options.includes(value) || value === "";
	return (
		<Labeled {...props}>
			<select
				{...describedBy(id, marks.at(id))}
				title={help}
				value={value}
				onChange={(event) => {
					onChange(event.currentTarget.value);
					marks.left(id);
				}}
			>
				{(blank !== undefined || value === "") && (
					<option value="">{blank ?? ""}</option>
				)}
				{!known && <option value={value}>{value}</option>}
				{options.map((option) => (
					<option key={option} value={option}>
						{option}
					</option>
				))}
			</select>
		</Labeled>
	);
}

function Labeled({
	id,
	label,
	after,
	children,
}: FieldProps & { children: ComponentChildren }) {
	return (
		<div class="field">
			<label for={id}>{label}</label>
			{after === undefined ? (
				children
			) : (
				<div class="with-after">
					{children}
					<output for={id} aria-live="off">
						{after}
					</output>
				</div>
			)}
			<Mistake id={id} />
		</div>
	);
}

const describedBy = (
	id: string,
	mistake: string | undefined,
	suffix?: string,
) => ({
	id,
	"aria-invalid": mistake ? ("true" as const) : undefined,
	"aria-describedby":
		[suffix && `${id}-unit`, mistake && `${id}-mistake`]
			.filter(Boolean)
			.join(" ") || undefined,
});
