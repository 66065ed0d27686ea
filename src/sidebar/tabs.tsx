/** The panel's views behind one button each; all stay in the page, so nothing typed is lost by a switch. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

export interface View {
	id: string;
	label: string;
	content: ComponentChildren;
}

export function Tabs({ views }: { views: readonly View[] }) {
	const [shown, setShown] = useState(views[0]?.id);
	const go = (step: number) => {
		const at = views.findIndex(({ id }) => id === shown);
		const next = views[(at + step + views.length) % views.length];
		if (!next) return;
		setShown(next.id);
		document.getElementById(`tab-${next.id}`)?.focus();
	};
	const steps = new Map([
		["ArrowRight", 1],
		["ArrowLeft", -1],
	]);
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
							onClick={() => setShown(id)}
							onKeyDown={(event) => go(steps.get(event.key) ?? 0)}
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
