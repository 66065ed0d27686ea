/** A whole number that goes up and down by one. */
interface Props {
	id: string;
	label: string;
	value: number;
	least: number;
	most?: number;
	onChange(value: number): void;
	/** What going up is called, where it is more than a number. */
	next?: string;
}

export function Stepper(props: Props) {
	const { id, label, value, least, most = 9999, onChange, next } = props;
	const step = (by: number) =>
		onChange(Math.max(least, Math.min(most, value + by)));
	return (
		// biome-ignore lint/a11y/useSemanticElements: a fieldset does not lay its parts out in a row everywhere
		<div class="stepper" role="group" aria-labelledby={`${id}-label`}>
			<span id={`${id}-label`} class={next && "unseen"}>
				{label}
			</span>
			<button
				type="button"
				aria-label={next ? "Earlier arrangement" : "Fewer folds"}
				aria-disabled={value <= least}
				onClick={() => step(-1)}
			>
				−
			</button>
			<output aria-live="polite">{value}</output>
			<button
				type="button"
				aria-label={next ? undefined : "More folds"}
				aria-disabled={value >= most}
				onClick={() => step(1)}
			>
				{next ?? "+"}
			</button>
		</div>
	);
}
