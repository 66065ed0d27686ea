/** One function: its arguments to fill in, an example, what it does not cover, and the formula for the cell. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { ArgumentHelp, FunctionHelp } from "../../functions/help";
import { TextField } from "../field";
import { Came } from "../notice";
import type { Ask } from "../script";
import { useDoing } from "../use-doing";
import { formulaText } from "./formula";

interface DetailProps {
	ask: Ask;
	separator: string;
	fn: FunctionHelp;
	back(): void;
}

export function Detail({ ask, separator, fn, back }: DetailProps) {
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => heading.current?.focus(), []);
	const [args, setArgs] = useState<readonly string[]>(fn.example.shown);
	const inserting = useDoing();
	const formula = formulaText(fn.name, args, separator);
	const insert = () =>
		void inserting.run(
			() => ask("insertFormula", formula),
			(cell) => `It is in ${cell}.`,
			"Look at the cell.",
		);
	return (
		<article aria-labelledby="function-heading">
			<button type="button" class="quiet" onClick={back}>
				← All functions
			</button>
			<h2 id="function-heading" ref={heading} tabIndex={-1} class="code">
				{fn.name}
			</h2>
			<p>{fn.summary}</p>
			<h3>Arguments, filled with the example</h3>
			{fn.arguments.map((argument, index) => (
				<Argument
					key={argument.name}
					argument={argument}
					value={args[index] ?? ""}
					onChange={(typed) =>
						setArgs(
							fn.arguments.map((_, at) =>
								at === index ? typed : (args[at] ?? ""),
							),
						)
					}
				/>
			))}
			<h3>Formula</h3>
			<p class="code formula">{formula}</p>
			<button
				type="button"
				class="main"
				onClick={insert}
				aria-disabled={inserting.busy}
			>
				Put in the current cell
			</button>
			<Came told={inserting.told} />
			<About fn={fn} separator={separator} />
		</article>
	);
}

interface ArgumentProps {
	argument: ArgumentHelp;
	value: string;
	onChange(typed: string): void;
}

function Argument({ argument, value, onChange }: ArgumentProps) {
	const { name, help, optional, facts, columns } = argument;
	return (
		<div class="argument">
			<TextField
				id={`argument-${name}`}
				label={optional ? `${name} (optional)` : name}
				value={value}
				onChange={onChange}
				numeric
			/>
			<p class="hint">{facts ? `${help} (${facts})` : help}</p>
			{columns && <p class="hint">Columns: {columns}</p>}
		</div>
	);
}

function About({ fn, separator }: { fn: FunctionHelp; separator: string }) {
	const { shown, answer, working } = fn.example;
	return (
		<>
			<h3>Answer</h3>
			<p class="sentence">{fn.answer}</p>
			<h3>Example</h3>
			<p class="code formula">
				{formulaText(fn.name, shown, separator)}
				{answer && ` → ${answer}`}
			</p>
			<p class="sentence">{working}</p>
			{fn.limits && (
				<>
					<h3>Limits</h3>
					<p>{fn.limits}</p>
				</>
			)}
			<h3>Source</h3>
			<p>{fn.source}</p>
		</>
	);
}
