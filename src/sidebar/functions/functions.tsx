/** Finds a sheet function by what it does, explains it and puts it in the current cell. */
import { useState } from "preact/hooks";
import type { SheetFunction } from "../../functions/declare";
import { registry } from "../../functions/index";
import { TextField } from "../field";
import type { Ask } from "../script";
import { Detail } from "./detail";
import { found } from "./find";

interface Props {
	ask: Ask;
	separator: string;
}

export function Functions({ ask, separator }: Props) {
	const [typed, setTyped] = useState("");
	const [opened, setOpened] = useState<SheetFunction>();
	const back = () => {
		const name = opened?.name;
		setOpened(undefined);
		setTimeout(() => document.getElementById(`function-${name}`)?.focus(), 0);
	};
	if (opened)
		return <Detail ask={ask} separator={separator} fn={opened} back={back} />;
	const list = found(registry, typed);
	return (
		<>
			<TextField
				id="function-search"
				label="What should it work out?"
				value={typed}
				onChange={setTyped}
			/>
			<p class="told" role="status">
				{typed.trim() === "" ? "" : countText(list.length)}
			</p>
			<ul class="cards">
				{list.map((fn) => (
					<li key={fn.name} class="card">
						<button
							type="button"
							id={`function-${fn.name}`}
							class="fold"
							onClick={() => setOpened(fn)}
						>
							<span class="name">{fn.name}</span>
							<span class="line">{fn.summary}</span>
						</button>
					</li>
				))}
			</ul>
		</>
	);
}

function countText(count: number): string {
	if (count === 0) return "No function has all of these words. Try fewer.";
	return count === 1 ? "1 function" : `${count} functions`;
}
