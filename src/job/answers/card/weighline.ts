/** A line of the card's weigh-out: what the scale is to show, and what it said. */
import { allowance, type Batched, isFineEnough } from "../../../calc/tolerance";
import { offBy, onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { fromSi, toSi, unitName } from "../../reading/units";
import { type Given, inUnit, setting } from "../given";
import {
	is,
	isKnown,
	type Known,
	look,
	orNull,
	type Said,
	saidOf,
} from "../known";
import { ICE, weighedOf, weightIn } from "./loadpour";

/** In the person's unit of mass. */
export interface WeighOutLine {
	name: string;
	/** Of the mix design. */
	planned: number;
	/** After what was weighed too much: to weigh now. */
	mass: number;
	/** The same as its scale shows it. */
	shown: number;
	/** Which scale it goes on. */
	scale: "mix" | "gram";
	weighed: number | null;
	/** What is in the mixer once what is asked for is in, too. */
	inMixer: number;
	/** Whole packs and the rest, what is still to come, or what is wrong. */
	say: Said;
}

export interface Line {
	name: string;
	planned: number;
	/** Of the whole packs it is bought in. */
	pack: number | undefined;
	weighed: Known<number>;
	kind: Batched;
	/** The scale it goes on, and its division in the person's unit of mass. */
	scale: "mix" | "gram";
	division: number;
}

export interface Planned {
	name: string;
	kg: number;
	pack: number | undefined;
	kind: Batched;
}

export function lineOf(
	given: Given,
	pour: PourInput,
	{ name, kg, pack, kind }: Planned,
	{ divisionKg, isAlone }: { divisionKg: number; isAlone: boolean },
): Line {
	const planned = inUnit(given, "mass", kg);
	const weighed = weightIn(
		`the weight of ${name}`,
		weighedOf(pour, name),
		given.units,
	);
	const grams =
		name === ICE ? undefined : gramDivisionKg(given, kg, divisionKg, kind);
	return {
		name,
		planned,
		pack: pack === undefined ? undefined : inUnit(given, "mass", pack),
		weighed: isKnown(weighed) ? fits(weighed, name, planned, isAlone) : weighed,
		kind,
		scale: grams === undefined ? "mix" : "gram",
		division: inUnit(given, "mass", grams ?? divisionKg),
	};
}

/** Of the gram scale, where the mix scale is too coarse for so little and the gram scale takes it. */
function gramDivisionKg(
	given: Given,
	kg: number,
	divisionKg: number,
	kind: Batched,
): number | undefined {
	const most = orNull(setting(given, "gram_most"));
	const grams = orNull(setting(given, "gram_division"));
	return most !== null &&
		grams !== null &&
		kg > 0 &&
		kg <= most &&
		grams < divisionKg &&
		!isFineEnough(offBy(kg, divisionKg), kind)
		? grams
		: undefined;
}

function fits(
	weighed: { is: number },
	name: string,
	planned: number,
	isAlone: boolean,
): Known<number> {
	const got = plain(weighed.is);
	if (!isAlone)
		return look(
			`two ingredients of the mix are named ${name}: give each a name of its own on the Mixes tab`,
		);
	if (weighed.is < 0)
		return look(`the weight of ${name} must be 0 or more, got ${got}`);
	return planned > 0 || weighed.is === 0
		? weighed
		: look(
				`the weight of ${name} must be blank, for none of it is planned, got ${got}`,
			);
}

/** What all lines together come to. */
export interface Raised {
	factor: number;
	/** The line that raised the others. */
	culprit: Line | undefined;
	/** All lines after it. */
	total: number;
	/** What the mixer takes; undefined while it is not known. */
	capacity: number | undefined;
	/** Whether the others have followed. */
	matched: boolean;
}

/** How far a weight is from what is asked for; 0 within its allowance. */
export const offAsked = (
	{ weighed, planned, division, kind }: Line,
	factor: number,
): number => {
	if (!isKnown(weighed)) return 0;
	const asked = planned * factor;
	const off = weighed.is - asked;
	return Math.abs(off) > allowance(asked, division, kind) ? off : 0;
};

export function withAmounts(
	given: Given,
	line: Line,
	raised: Raised,
): WeighOutLine {
	const { name, planned, weighed, scale, division } = line;
	const mass = planned * raised.factor;
	const shown = onScale(mass, division);
	return {
		name,
		planned,
		mass,
		shown,
		scale,
		weighed: isKnown(weighed) ? weighed.is : null,
		inMixer:
			isKnown(weighed) && offAsked(line, raised.factor) >= 0
				? weighed.is
				: mass,
		say: saidOf(
			"look" in weighed ? weighed : sentence(given, line, raised, shown),
		),
	};
}

/** A weight as a sentence says it: to the hundredth, or to the tenth of a gram. */
const weight = ({ units }: Given, amount: number, { scale }: Line): string =>
	scale === "gram"
		? `${Number((toSi(amount, "mass", units) * 1000).toFixed(1))} g`
		: `${Number(amount.toFixed(2))} ${unitName("mass", units)}`;

function sentence(
	given: Given,
	line: Line,
	raised: Raised,
	shown: number,
): Known<string> {
	const { weighed } = line;
	if (!isKnown(weighed)) return is(toWeigh(given, line, shown));
	if (line === raised.culprit) return tooMuch(given, line, raised);
	const off = offAsked(line, raised.factor);
	return off < 0 ? look(`${weight(given, -off, line)} more`) : is("");
}

/** Whole packs and the rest, and on which scale: a coarse one says how far off it may be. */
function toWeigh(
	given: Given,
	{ pack = 0, division, scale, kind }: Line,
	shown: number,
): string {
	const unit = unitName("mass", given.units);
	if (scale === "gram") {
		const grams = fromSi(toSi(shown, "mass", given.units), "pigment", "metric");
		const text = `${Number(grams.toFixed(4))} g`;
		return `gram scale: ${text}, typed so or in ${unit}`;
	}
	const packs = pack > 0 ? Math.floor(shown / pack + 1e-9) : 0;
	const rest = shown - packs * pack;
	const off = offBy(shown, division);
	return [
		packs > 0
			? `${packs} of ${plain(pack)} ${unit}${rest > division / 2 ? ` + ${Number(rest.toFixed(3))} ${unit}` : ""}`
			: "",
		isFineEnough(off, kind)
			? ""
			: `the mix scale may be off by ${percent(off)} (k = 2)`,
	]
		.filter((words) => words !== "")
		.join("; ");
}

const percent = (share: number): string =>
	`${Number((share * 100).toPrecision(2))}%`;

/** Two ways out, and what stands against the second. */
function tooMuch(
	given: Given,
	line: Line,
	{ factor, total, capacity, matched }: Raised,
): Known<string> {
	const unit = unitName("mass", given.units);
	const extra = weight(given, line.planned * (factor - 1), line);
	const all = `${Number(total.toFixed(2))} ${unit}`;
	if (capacity !== undefined && total > capacity)
		return look(
			`${extra} too much: take it out and type what is left. Raising the others would make ${all}, and the mixer takes ${plain(capacity)} ${unit}`,
		);
	const by = percent(factor - 1);
	return matched
		? is(`the others were raised by ${by} to match, ${all} in all`)
		: look(
				`${extra} too much: take it out and type what is left, or raise the others by ${by}, to ${all} in all`,
			);
}
