/** The panel's views behind one button each; all stay in the page, so nothing typed is lost by a switch. */
import type { ComponentChildren } from "preact";

interface Props<Id extends string> {
	views: readonly { id: Id; label: string; content: ComponentChildren }[];
	shown: Id;
	show(id: Id): void;
}

const STEPS = new Map([
	["ArrowRight", 1],
	["ArrowLeft", -1],
]);

export function Tabs<Id extends string>({ views, shown, show }: Props<Id>) {
	const go = (step: number | undefined) => {
		const at = views.findIndex(({ id }) => id === shown);
		const next = step && views[(at + step + views.length) % views.length];
		if (!next) return;
		show(next.id);
		document.getElementById(`tab-${next.id}`)?.focus();
	};
	return (
		<>
			<header>
				<h1 class="unseen">Tonefold</h1>
				<div role="tablist" aria-label="Views" class="tabs">
					{views.map(({ id, label }) => (
						<button
							key={id}
							id={`tab-${id}`}
							type="button"
							role="tab"
							aria-selected={id === shown ? "true" : "false"}
							aria-controls={`view-${id}`}
							tabIndex={id === shown ? 0 : -1}
							onClick={() => show(id)}
							onKeyDown={(event) => go(STEPS.get(event.key))}
						>
							{label}
						</button>
					))}
				</div>
			</header>
			<main>
				{views.map(({ id, content }) => (
					<section
						key={id}
						id={`view-${id}`}
						role="tabpanel"
						aria-labelledby={`tab-${id}`}
						hidden={id !== shown}
					>
						{content}
					</section>
				))}
			</main>
		</>
	);
}
