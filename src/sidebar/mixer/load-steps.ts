/** A load as steps to take one after the other, each worked out from what was weighed before it. */
import { onScale } from "../../calc/weighing";
import type { Basis } from "../../job/answers/basis";
import type { CardAnswer } from "../../job/answers/card/cardanswers";
import { weightIn } from "../../job/answers/card/loadpour";
import { type CardStep, scalesOf } from "../../job/answers/card/stepline";
import type { WeighOutLine } from "../../job/answers/card/weighline";
import { inUnit } from "../../job/answers/given";
import { isKnown, orNull } from "../../job/answers/known";
import type { Typed } from "../../job/fields/field";
import { plain } from "../../job/reading/cells";
import { unitName } from "../../job/reading/units";
import type { CardCell } from "../../sheets/messages";
import type { Scale } from "./scale-reading";
import { typedAt } from "./weighings";

export interface Step {
	id: string;
	/** Where its weight is written. */
	cell: Extract<CardCell, { weighed: unknown } | { step: unknown }>;
	/** `Weigh`, `Add`, `Pull off`, `Keep`, `Fill`. */
	does: string;
	what: string;
	/** `to the mixer`; `""` where there is nothing to say. */
	where: string;
	/** To the division of its scale. */
	amount: number;
	scale: Scale;
	/** What is written on the card for each unit of a reading. */
	perReading: number;
	/** What the scale said. */
	weighed: Typed;
	/** One more line, e.g. grams for each kilogram that is left. */
	hint: string;
	/** How far a finished tone is off; `""` when it is as wanted. */
	remark: string;
	/** It may be passed without a weight. */
	optional: boolean;
}

/** Ingredients of which there is none are left out. */
export function loadSteps(basis: Basis, card: CardAnswer): Step[] {
	const lines = (orNull(card.weighOut) ?? []).map((line) =>
		ingredientStep(basis, card, line),
	);
	return [
		...lines.filter(({ amount, weighed }) => amount > 0 || weighed !== ""),
		...(orNull(card.steps) ?? []).map((step) => planStep(basis, card, step)),
	];
}

function ingredientStep(
	{ given }: Basis,
	{ load }: CardAnswer,
	{ name, shown, scale, say }: WeighOutLine,
): Step {
	const cell = { weighed: name };
	const { units } = given;
	const scales = orNull(scalesOf(given));
	const typed = typedAt(given.job, { load, cell });
	const weighed = weightIn(name, typed, units);
	// A small ingredient is read in grams and stands on the card in the unit of the mix.
	const isGrams = scale === "gram";
	const perReading = isGrams ? inUnit(given, "mass", 0.001) : 1;
	return {
		id: `weighed ${name}`,
		cell,
		does: "Weigh",
		what: name,
		where: isGrams ? "on the gram scale" : "",
		amount: tidy(shown / perReading),
		scale: {
			division: (isGrams ? scales?.grams : scales?.mix) ?? 0,
			unit: unitName(isGrams ? "pigment" : "mass", units),
		},
		perReading,
		weighed: isKnown(weighed) ? tidy(weighed.is / perReading) : typed,
		hint: isGrams || !isKnown(weighed) ? "" : say.say,
		remark: "",
		optional: false,
	};
}

/** Without the last bits of a conversion. */
const tidy = (value: number): number => Number(value.toPrecision(12));

const DOES: Readonly<Record<CardStep["do"], [does: string, where: string]>> = {
	"pull off": ["Pull off", "from"],
	fill: ["Fill", "from"],
	add: ["Add", "to"],
	keep: ["Keep", "in"],
	"fold in": ["Fold in", "to"],
};

function planStep(
	{ given }: Basis,
	{ load }: CardAnswer,
	step: CardStep,
): Step {
	const scales = orNull(scalesOf(given));
	const isGrams = step.unit === unitName("pigment", given.units);
	const scale = {
		division: (isGrams ? scales?.grams : scales?.mix) ?? 0,
		unit: step.unit,
	};
	const cell = { step: step.number };
	const isReserve = step.number === 0;
	const [does, where] = DOES[step.do];
	return {
		id: `step ${step.number}`,
		cell,
		does,
		what: isReserve ? "reserve, undosed" : step.what,
		where: isReserve
			? ""
			: `${where} ${step.vessel.replace("mixer", "the mixer")}`,
		// The vessel is weighed with what will stick in it.
		amount: onScale(step.amount, scale.division),
		scale,
		perReading: 1,
		weighed: typedAt(given.job, { load, cell }),
		hint: hintOf(step, unitName("mass", given.units)),
		remark: step.remark,
		optional: step.do === "keep",
	};
}

function hintOf(
	{ number, gramsPerLeft, dry, amount, sticks, doseOff }: CardStep,
	massUnit: string,
): string {
	if (number === 0)
		return "Cover it: it lightens a tone that came out too dark.";
	if (gramsPerLeft !== null && dry !== null)
		return [
			...(Math.abs(dry - amount) < 0.05
				? []
				: [`As weighed, with its water: ${Number(dry.toFixed(1))} g dry`]),
			`${Number(gramsPerLeft.toPrecision(3))} g for each ${massUnit} in it`,
			...(doseOff === null
				? []
				: [`±${Number((doseOff * 100).toPrecision(2))}% (k = 2)`]),
		].join("; ");
	return sticks > 0 ? `About ${plain(sticks)} ${massUnit} of it sticks.` : "";
}
