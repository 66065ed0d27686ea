/** What the job takes, as far as it is known. */

import { useEffect, useState } from "preact/hooks";
import { sum } from "../../calc/sum";
import { withCurrency } from "../../job/answers/given";
import {
	gramsShown,
	numberShown,
	percentShown,
	roughly,
	withUnit,
} from "../shown";
import type { SectionProps } from "./use-new-job";

type Line = readonly [what: string, howMuch: string];

interface TotalsProps extends SectionProps {
	/** What is still to be filled in or corrected. */
	missing: string;
	showMissing(): void;
}

export function Totals(props: TotalsProps) {
	const lines = [
		...batchLines(props),
		...pigmentLines(props),
		...priceLines(props),
	];
	return (
		<section aria-labelledby="totals-heading">
			<h2 id="totals-heading">What it takes</h2>
			{lines.length > 0 && (
				<dl>
					{lines.map(([what, howMuch]) => (
						<div key={what}>
							<dt>{what}</dt>
							<dd>{howMuch}</dd>
						</div>
					))}
				</dl>
			)}
			{priceNote(props) && <p class="hint">{priceNote(props)}</p>}
			{props.figures.problem && <p class="mistake">{props.figures.problem}</p>}
			{props.missing && (
				<p class="hint">
					{props.missing}{" "}
					<button type="button" class="quiet" onClick={props.showMissing}>
						Show me
					</button>
				</p>
			)}
		</section>
	);
}

function batchLines({ figures, form, start, studio }: SectionProps): Line[] {
	const { volume, mass, loads } = figures;
	const { units } = form;
	const shown = (value: number, quantity: "volume" | "mass") =>
		withUnit(value, quantity, units, start.separator);
	const lines: Line[] = [];
	if (volume !== undefined) lines.push(["To cast", shown(volume, "volume")]);
	if (mass !== undefined)
		lines.push([
			`Mix, with ${percentShown(Number(form.rest.waste ?? studio.settings.waste), start.separator)} waste`,
			shown(mass, "mass"),
		]);
	if (loads && loads.length > 0)
		lines.push([
			`Mixer loads of at most ${shown(Number(studio.settings.mixer_capacity), "mass")}`,
			`${loads.length}, heaviest ${shown(Math.max(...loads), "mass")}`,
		]);
	return lines;
}

const pigmentLines = ({ figures, start }: SectionProps): Line[] =>
	(figures.pigments ?? []).map(({ name, grams }) => [
		name,
		gramsShown(grams, start.separator),
	]);

function priceLines({ figures, start, studio }: SectionProps): Line[] {
	const { price } = figures;
	if (!price || price.mix + price.pigment === 0) return [];
	const shown = (amount: number) => moneyShown(amount, { start, studio });
	return [
		["Mix cost", shown(price.mix)],
		["Pigment cost", shown(price.pigment)],
		["First price, materials only", shown(price.mix + price.pigment)],
	];
}

/** What is not in the first price. */
function priceNote({ figures: { price } }: SectionProps): string {
	if (!price) return "";
	const without =
		price.missing.length > 0
			? `Without ${price.missing.join(", ")}: no pack price yet. `
			: "";
	return `${without}Labor, mold, overhead and margin come on the Cost tab.`;
}

const moneyShown = (
	amount: number,
	{ start, studio }: Pick<SectionProps, "start" | "studio">,
): string => withCurrency(studio, numberShown(amount, 2, start.separator));

const priceSum = ({ price }: SectionProps["figures"]): number =>
	price ? price.mix + price.pigment : 0;

/** `318 kg · 3 loads · 2 140 g pigment · from € 480.00` */
export function summaryOf(section: SectionProps): string {
	const { figures, form, start } = section;
	const { mass, loads, pigments } = figures;
	const grams = pigments && sum(pigments.map((pigment) => pigment.grams));
	return [
		mass !== undefined && withUnit(mass, "mass", form.units, start.separator),
		loads &&
			loads.length > 0 &&
			`${loads.length} ${loads.length === 1 ? "load" : "loads"}`,
		grams !== undefined && `${roughly(grams, start.separator)} g pigment`,
		priceSum(figures) > 0 && `from ${moneyShown(priceSum(figures), section)}`,
	]
		.filter(Boolean)
		.join(" · ");
}

/** A pause in typing before the figures are read out: a screen reader would else speak at every key. */
const PAUSE_MS = 900;

export function Spoken({ text }: { text: string }) {
	const [spoken, setSpoken] = useState("");
	useEffect(() => {
		const timer = setTimeout(() => setSpoken(text), PAUSE_MS);
		return () => clearTimeout(timer);
	}, [text]);
	return (
		<p class="unseen" role="status">
			{spoken}
		</p>
	);
}
