/** What the scale said, and the button that says it is done. */
import { useState } from "preact/hooks";
import { InputError } from "../../calc/errors";
import { ended } from "../sentence";
import type { Step } from "./load-steps";
import { isFar, scaleReading, weightShown } from "./scale-reading";

interface Props {
	step: Step;
	separator: string;
	/** What the field begins with. */
	begun: string;
	done(weight: number | ""): void;
	/** Why the plan cannot be followed with this weight. */
	refusal(weight: number): string;
	/** Told as one types, so that what follows from it can be shown. */
	typed(weight: number | undefined): void;
}

export function ScaleEntry(props: Props) {
	const { step, separator, begun } = props;
	const [text, setText] = useState(begun);
	const [asked, setAsked] = useState<string>();
	const [mistake, setMistake] = useState("");
	const has = step.weighed !== "";
	const read = (of: string): number | undefined | Error => {
		try {
			return scaleReading(of, step.amount);
		} catch (error) {
			if (error instanceof InputError) return error;
			throw error;
		}
	};
	const change = (next: string) => {
		setText(next);
		setMistake("");
		setAsked(undefined);
		const weight = read(next);
		props.typed(typeof weight === "number" ? weight : undefined);
	};
	const reading = read(text);
	const typed = typeof reading === "number" ? reading : undefined;
	const finish = () => {
		if (reading instanceof Error) return setMistake(ended(reading.message));
		if (typed === undefined)
			return props.done(has || step.optional ? "" : step.amount);
		const refusal = props.refusal(typed);
		if (refusal) return setMistake(ended(refusal));
		if (isFar(typed, step.amount) && asked !== text) {
			setAsked(text);
			return setMistake(farText(typed, step.amount));
		}
		props.done(typed);
	};
	return (
		<form
			class="scale"
			onSubmit={(event) => {
				event.preventDefault();
				finish();
			}}
		>
			<label for="scale-said">The scale says</label>
			<span class="with-suffix">
				<input
					id="scale-said"
					type="text"
					inputMode="decimal"
					enterkeyhint="done"
					autocomplete="off"
					dir="ltr"
					value={text}
					aria-invalid={mistake ? "true" : undefined}
					aria-describedby={mistake ? "scale-mistake" : "scale-unit"}
					onInput={(event) => change(event.currentTarget.value)}
				/>
				<span class="suffix" id="scale-unit">
					{step.scale.unit}
				</span>
			</span>
			{mistake && (
				<p class="mistake" id="scale-mistake" role="alert">
					{mistake}
				</p>
			)}
			<button type="submit" class="main">
				{doneText(step, typed, separator, asked === text)}
			</button>
		</form>
	);
}

function doneText(
	step: Step,
	typed: number | undefined,
	separator: string,
	sure: boolean,
): string {
	if (typed !== undefined) {
		const weight = weightShown(typed, step.scale, separator);
		if (sure) return `Yes, ${weight}`;
		return step.weighed === "" ? `Done: ${weight}` : `Change to ${weight}`;
	}
	if (step.weighed !== "") return "Next";
	if (step.optional) return "Done";
	return `Done: ${weightShown(step.amount, step.scale, separator)}`;
}

function farText(typed: number, amount: number): string {
	const more = typed > amount;
	if (amount === 0) return "None was asked for. Press again if it was added.";
	const share = Math.abs(typed / amount - 1);
	const off =
		share >= 2
			? `${Number((typed / amount).toPrecision(2))} times what was asked for`
			: `${Math.round(share * 100)}% ${more ? "more" : "less"} than asked for`;
	return `${off}. Press again if the scale says so.`;
}
