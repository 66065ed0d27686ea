/** Finds a sheet function by what it does, explains it and puts it in the current cell. */
import { useState } from "preact/hooks";
import type { FunctionHelp } from "../../functions/help";
import { TextField } from "../field";
import { focusSoon } from "../focus";
import { Failed, Notice } from "../notice";
import type { Ask } from "../script";
import { useAnswer } from "../use-answer";
import { Detail } from "./detail";
import { found } from "./find";

interface Props {
	ask: Ask;
	separator: string;
	inSight: boolean;
}

export function Functions({ ask, separator, inSight }: Props) {
	const {
		answer: all,
		failure,
		askAgain,
	} = useAnswer(ask, "functionHelp", inSight);
	const [opened, setOpened] = useState<FunctionHelp>();
	const [typed, setTyped] = useState("");
	if (failure) return <Failed failure={failure} again={askAgain} />;
	if (!all) return <Notice kind="plain">Reading the functions…</Notice>;
	if (!opened)
		return (
			<List all={all} typed={typed} setTyped={setTyped} open={setOpened} />
		);
	const back = () => {
		setOpened(undefined);
		focusSoon(`function-${opened.name}`);
	};
	return <Detail ask={ask} separator={separator} fn={opened} back={back} />;
}

interface ListProps {
	all: readonly FunctionHelp[];
	typed: string;
	setTyped(typed: string): void;
	open(fn: FunctionHelp): void;
}

function List({ all, typed, setTyped, open }: ListProps) {
	const list = found(all, typed);
	const searching = typed.trim() !== "";
	const groups = [...new Set(all.map(({ group }) => group))];
	return (
		<>
			<TextField
				id="function-search"
				label="What should it work out?"
				value={typed}
				onChange={setTyped}
			/>
			<p class="told" role="status">
				{searching ? countText(list.length) : ""}
			</p>
			{searching ? (
				<Cards list={list} open={open} />
			) : (
				groups.map((group) => (
					<section key={group} aria-label={group}>
						<h2>{group}</h2>
						<Cards list={list.filter((fn) => fn.group === group)} open={open} />
					</section>
				))
			)}
		</>
	);
}

function Cards({
	list,
	open,
}: {
	list: readonly FunctionHelp[];
	open(fn: FunctionHelp): void;
}) {
	return (
		<ul class="cards">
			{list.map((fn) => (
				<li key={fn.name} class="card">
					<button
						type="button"
						id={`function-${fn.name}`}
						class="fold"
						onClick={() => open(fn)}
					>
						<span class="name">{fn.name}</span>
						<span class="line">{fn.summary}</span>
					</button>
				</li>
			))}
		</ul>
	);
}

function countText(count: number): string {
	if (count === 0) return "No function has all of these words. Try fewer.";
	return count === 1 ? "1 function" : `${count} functions`;
}
