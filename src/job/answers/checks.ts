/** What could be wrong with a job: each check is fine, or says what to look at, or what is not known yet. */
import { sum } from "../../calc/sum";
import { isHollow } from "../../calc/takeoff";
import { MOST } from "../jobfile";
import type { Basis } from "./basis";
import type { CardAnswer } from "./card/cardanswers";
import { vesselCount } from "./card/cardsteps";
import { planCheck } from "./card/planfit";
import { inUnit, setting } from "./given";
import {
	all,
	flat,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	type Said,
	type State,
	saidOf,
} from "./known";
import { liftAnswer } from "./lifting";
import { loadsOf, overPieces } from "./loads";
import { agreedCheck } from "./money/agreed";
import { wasteOf } from "./pieces";
import { placesCheck } from "./places";
import { backingProblem } from "./tones";
import type { Whole } from "./whole";

export interface Check extends Said {
	key: string;
	/** What is checked. */
	what: string;
	/** From 1 to 3, which is the worst. */
	weight: 1 | 2 | 3;
	/** The block to look at, by its tab and key. */
	cell: string;
}

type Declared = readonly [
	key: string,
	what: string,
	weight: Check["weight"],
	cell: string,
	says: (whole: Whole) => Said,
];

const FINE = is("fine");

/** Fine where it holds, else what is to be looked at. */
const holds = (known: Known<boolean>, sentence: string): Said =>
	saidOf(isKnown(known) ? (known.is ? FINE : look(sentence)) : known);

/** The first of them that is wrong, else the first that is not known. */
const worst = (said: readonly Said[]): Said =>
	said.find(({ state }) => state === "look") ??
	said.find(({ state }) => state === "unknown") ??
	saidOf(FINE);

/** What several values say of themselves: fine once all are known. */
const allKnown = (known: readonly Known<unknown>[]): Said =>
	worst(known.map((one) => saidOf(from(one, () => "fine"))));

/** The steps of every load; not known while there are no loads. */
const stepsOf = (cards: readonly CardAnswer[]) =>
	cards.length === 0
		? missing("the loads of the job")
		: from(all(cards.map(({ steps }) => steps)), (each) => each.flat());

/** What is said of the tones; not known while there are none. */
const ofTones = ({ tones }: Basis, says: () => Said): Said =>
	tones.rows.length === 0 ? saidOf(from(tones.typed, () => "fine")) : says();

const CHECKS: readonly Declared[] = [
	[
		"calculates",
		"Everything calculates",
		3,
		"Job.pieces",
		({ basis, cards }) => {
			const { given, pieces, mix, loads, tones, pigments } = basis;
			const backing = backingProblem(given);
			return worst([
				allKnown([
					mix.ingredients,
					overPieces(given, pieces, ({ sizes }) => sizes),
					mix.densityKgPerM3,
					mix.binderShare,
					tones.typed,
					...pigments.flatMap(({ basis, maximum, solids, toBinder }) => [
						basis,
						maximum,
						solids,
						toBinder,
					]),
					tones.dry,
					loads.castings,
				]),
				...(backing ? [saidOf(look(backing))] : []),
				...cards().map(({ weighOut, steps }) => allKnown([weighOut, steps])),
			]);
		},
	],
	[
		"pigmentLimit",
		"Pigment limit of every tone",
		3,
		"Tones.headroom",
		({ basis }) =>
			ofTones(basis, () =>
				holds(
					from(all(basis.tones.rows.map(({ headroom }) => headroom)), (each) =>
						each.every((room) => room >= 0),
					),
					"a tone is over its pigment limit: dose it less, or name a stronger pigment",
				),
			),
	],
	[
		"planWeights",
		"Weights belong to this plan",
		3,
		"Pour card.planNumber",
		({ basis }) => planCheck(basis),
	],
	[
		"hands",
		"Every mold is the right hand",
		3,
		"Job.faces",
		({ basis }) =>
			holds(
				from(
					overPieces(basis.given, basis.pieces, ({ mold }) => mold),
					(molds) =>
						molds.every((mold) =>
							Object.values(mold).every(
								(words: string) => !words.startsWith("Look:"),
							),
						),
				),
				"say how it is cast, where its notch is and its drop edge: else the wrong hand may be built",
			),
	],
	[
		"places",
		"Every cutout is in its place",
		3,
		"Job.cutouts",
		({ basis }) =>
			allKnown([
				overPieces(basis.given, basis.pieces, (piece) =>
					placesCheck(basis.given, piece),
				),
			]),
	],
	[
		"lifting",
		"The crew can lift every piece",
		3,
		"Job.weights",
		({ basis }) =>
			allKnown([overPieces(basis.given, basis.pieces, ({ lift }) => lift.by)]),
	],
	[
		"carriedFlat",
		"Slabs carried flat by their ends",
		3,
		"Job.carrying",
		({ basis }) =>
			allKnown([
				overPieces(basis.given, basis.pieces, ({ piece, handling }) =>
					isKnown(piece) && isHollow(piece.is)
						? is([])
						: all<readonly string[]>(
								handling().moments.map(({ said }) => said),
							),
				),
			]),
	],
	[
		"turning",
		"The crew can turn every mold over",
		2,
		"Job.turned",
		({ basis: { given, pieces } }) =>
			allKnown([
				overPieces(given, pieces, ({ turnedKg }) =>
					flat(
						from(
							turnedKg,
							(mass): Known<unknown> =>
								mass === undefined ? is(mass) : liftAnswer(given, is(mass)).by,
						),
					),
				),
			]),
	],
	[
		"knockouts",
		"Knockouts stay down",
		3,
		"Job.knockouts",
		({ basis }) => {
			const said = worst(basis.knockouts.map(({ verdict }) => verdict));
			if (basis.knockouts.length === 0)
				return (basis.given.job.cutouts ?? []).length > 0
					? saidOf(missing("which knockouts keep the mix out of the cutouts"))
					: saidOf(is("fine"));
			return said.state === "look"
				? saidOf(
						look(
							"a knockout would float: fasten it, or weigh it down with more",
						),
					)
				: said;
		},
	],
	[
		"castingFits",
		"Every casting fits in one load",
		2,
		"Job.load_shares",
		({ basis }) =>
			holds(
				from(
					all([
						overPieces(basis.given, basis.pieces, ({ massKg }) => massKg),
						wasteOf(basis.given),
						setting(basis.given, "mixer_capacity"),
					] as [Known<readonly number[]>, Known<number>, Known<number>]),
					([masses, waste, capacity]) =>
						Math.max(0, ...masses) * (1 + waste) <= capacity,
				),
				"a piece is more than the mixer takes: cold joints and color differences are likely",
			),
	],
	[
		"loadBlends",
		"Every load is enough to blend",
		2,
		"Job.load_shares",
		({ basis }) =>
			holds(
				fromBoth(
					loadsOf(basis.loads),
					setting(basis.given, "least_blend"),
					(loads, least) => loads.every(({ massKg }) => massKg >= least),
				),
				"a load is less than the mixer blends well: pour it with another, or make more",
			),
	],
	[
		"toneBlends",
		"Every tone is enough to blend",
		2,
		"Pour card.steps",
		({ basis, cards }) =>
			holds(
				fromBoth(
					from(stepsOf(cards()), (steps) =>
						steps
							.filter(
								({ do: does, vessel }) => does === "add" && vessel === "mixer",
							)
							.map(({ left }) => left ?? 0),
					),
					setting(basis.given, "least_blend"),
					(left, least) =>
						left.every((mass) => mass >= inUnit(basis.given, "mass", least)),
				),
				"a tone in the mixer is less than it blends well: fold that one in a bucket",
			),
	],
	[
		"doseWeighable",
		"Every dose can be weighed to 5%",
		2,
		"Pour card.steps",
		({ cards }) =>
			holds(
				from(
					stepsOf(cards()),
					(steps) =>
						Math.max(0, ...steps.map(({ doseOff }) => doseOff ?? 0)) <= 1 / 20,
				),
				"a dose of a small load is too small for the gram scale: weigh it with more mix, or as a diluted paste",
			),
	],
	[
		"cardRoom",
		"The card has columns for every load",
		2,
		"Job.load_numbers",
		({ basis }) =>
			holds(
				from(basis.loads.count, (count) => count <= MOST.pours),
				`the Pour card has columns for ${MOST.pours} loads: split the job`,
			),
	],
	[
		"wasteCovers",
		"Waste covers reserve and what sticks",
		2,
		"Job.waste",
		({ basis }) => {
			const { given, loads } = basis;
			return holds(
				from(
					all([
						wasteOf(given),
						loads.batchKg,
						setting(given, "reserve"),
						setting(given, "sticks"),
						loads.count,
						vesselCount(basis),
					] as Known<number>[]),
					([
						waste = 0,
						batchKg = 0,
						reserve = 0,
						sticksKg = 0,
						count = 0,
						vessels = 0,
					]) =>
						(waste * batchKg) / (1 + waste) >=
						reserve * batchKg + sticksKg * count * vessels,
				),
				"waste is less than the reserve and what sticks: raise it, or the last mold runs short",
			);
		},
	],
	[
		"timeFits",
		"The steps fit in the working time",
		2,
		"Pour card.waterInAt",
		({ cards }) => overCards(cards(), ({ times }) => times.timeCheck),
	],
	[
		"mixTemperature",
		"The mix is not too warm",
		2,
		"Pour card.dryTemperature",
		({ cards }) => overCards(cards(), ({ water }) => water.warmth),
	],
	[
		"drying",
		"Drying before it is covered",
		2,
		"Cure.dryingAir",
		({ cure }) => cure().drying.drying,
	],
	[
		"moldTime",
		"Out of the mold before it shrinks onto it",
		2,
		"Job.pourDate",
		({ cure }) => cure().moldTime,
	],
	[
		"date",
		"The date can be met",
		2,
		"Job.pourDate",
		({ cure }) => cure().calendar.inTime,
	],
	[
		"price",
		"The price covers the cost",
		2,
		"Cost.priceTyped",
		({ cost }) => cost().check,
	],
	[
		"agreed",
		"What was ordered has its price",
		2,
		"Quote.priceAgreed",
		({ basis, cost }) => agreedCheck(basis.given, cost().changes),
	],
	[
		"paid",
		"Payments fit the quote",
		2,
		"Cost.payments",
		({ basis: { given }, quote }) => {
			const { payments = [], changes = [] } = given.job;
			return payments.length + changes.length > 0 ? quote().open : saidOf(FINE);
		},
	],
	[
		"pigmentsKnown",
		"Every pigment is on the Pigments tab",
		2,
		"Tones.pigments",
		({ basis }) =>
			ofTones(basis, () =>
				allKnown(basis.pigments.map(({ maximum }) => maximum)),
			),
	],
	[
		"swatches",
		"Swatches match this mix and finish",
		1,
		"Tones.finish",
		({ basis, colors }) =>
			ofTones(basis, () => {
				const { tones, used } = colors();
				return worst([
					saidOf(from(used, () => "fine")),
					...tones.map(({ color }) => saidOf(from(color, () => "fine"))),
				]);
			}),
	],
	[
		"toldApart",
		"Neighboring tones can be told apart",
		1,
		"Tones.tones",
		({ basis, colors }) =>
			ofTones(basis, () =>
				worst(colors().tones.map(({ toldApart }) => toldApart)),
			),
	],
	[
		"shares",
		"Tone shares add up to 100%",
		1,
		"Tones.tones",
		({ basis }) =>
			holds(
				from(
					basis.tones.typed,
					(tones) =>
						Math.abs(sum(tones.map(({ share }) => share)) - 1) < 1 / 1000,
				),
				"shares are not 100% together: they count as parts of the whole",
			),
	],
];

/** What each load says, of which the worst counts; not known while there are no loads. */
function overCards(
	cards: readonly CardAnswer[],
	of: (card: CardAnswer) => Said,
): Said {
	return cards.length === 0
		? saidOf(missing("the loads of the job"))
		: worst(cards.map(of));
}

/** Every check in its order. */
export const checksOf = (whole: Whole): Check[] =>
	CHECKS.map(([key, what, weight, cell, says]) => {
		const { state, say } = says(whole);
		return {
			key,
			what,
			weight,
			cell,
			state,
			say: state === "fine" ? "fine" : say,
		};
	});

const RANK: Readonly<Record<State, number>> = { look: 0, unknown: 1, fine: 2 };

/** What is wrong first, the worst of it before the rest, then what is not known yet. */
export const byWorst = (checks: readonly Check[]): Check[] =>
	[...checks].sort(
		(one, other) =>
			RANK[one.state] - RANK[other.state] || other.weight - one.weight,
	);
