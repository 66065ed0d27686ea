/** The answers of a job as plain JSON, in the workbook's units: what is not known is null. */
import type { JobFile } from "../jobfile";
import { fromSi, type Quantity } from "../reading/units";
import type { StudioFile } from "../studiofile";
import { cardJson } from "./card/cardjson";
import { checksOf } from "./checks";
import { cureDays } from "./cure/cure";
import { from, is, type Known, orNull, saidOf } from "./known";
import { loadsOf } from "./loads";
import { moldJson } from "./mold/moldjson";
import { buyJson, costJson, quoteJson } from "./money/moneyjson";
import type { PieceAnswer } from "./pieces";
import { type Whole, wholeOf } from "./whole";

/** Everything that follows from a job and its studio. */
export const answers = (studio: StudioFile, job: JobFile) =>
	answersJson(wholeOf(studio, job));

export type Answers = ReturnType<typeof answersJson>;

export function answersJson(whole: Whole) {
	const { basis } = whole;
	const { given, pieces, loads, pigments, tones } = basis;
	const inUnit = (quantity: Quantity) => (known: Known<number | undefined>) => {
		const si = orNull(known);
		return si === null || si === undefined
			? null
			: fromSi(si, quantity, given.units);
	};
	const mass = inUnit("mass");
	const colors = whole.colors();
	return {
		units: given.units,
		pieces: pieces.map((piece) => pieceJson(piece, inUnit)),
		loads: (orNull(loadsOf(loads)) ?? []).map(
			({ number, castings, massKg }) => ({
				number,
				castings,
				mass: fromSi(massKg, "mass", given.units),
				...poured(whole, number),
			}),
		),
		tones: tones.rows.map((tone, i) => ({
			name: tone.name,
			share: orNull(from(tones.dry, (all) => all[i]?.share ?? null)),
			mass: mass(tone.undosedKg),
			onScale: mass(tone.scaleKg),
			pigments: grams(tone.dryKg, pigments),
			weighed: grams(tone.weighedKg, pigments),
			waterBinder: orNull(tone.waterBinder),
			water: tone.waterSaid,
			expected: orNull(colors.tones[i]?.color ?? { missing: "" }),
			headroom: orNull(tone.headroom),
		})),
		cards: whole.cards().map(cardJson),
		cure: cureDays(whole.cure()),
		mold: moldJson(whole.mold(), whole.cost(), given.units),
		cost: costJson(whole.cost()),
		quote: quoteJson(whole.quote()),
		buy: buyJson(whole.buy()),
		checks: checksOf(whole).map(({ key, what, state, say, cell }) => ({
			key,
			what,
			state,
			say,
			cell,
		})),
	};
}

function pieceJson(
	piece: PieceAnswer,
	inUnit: (
		quantity: Quantity,
	) => (known: Known<number | undefined>) => number | null,
) {
	const size = (
		key: "faceM2" | "edgeM" | "volumeM3" | "finishM2",
		quantity: Quantity,
	) => inUnit(quantity)(from(piece.sizes, (sizes) => sizes[key]));
	const handling = piece.handling();
	const length = (lengthM: number | undefined) => inUnit("length")(is(lengthM));
	const people = orNull(piece.lift.people);
	return {
		name: piece.name,
		quantity: orNull(piece.quantity),
		area: size("faceM2", "area"),
		volume: size("volumeM3", "volume"),
		edgeLength: size("edgeM", "length"),
		finishArea: size("finishM2", "area"),
		freshMass: inUnit("mass")(piece.massKg),
		longestSide: inUnit("length")(piece.longestSideM),
		carry: {
			people: people === "equipment" ? null : people,
			equipment: people === null ? null : people === "equipment",
			...saidOf(piece.carry()),
		},
		section: {
			net: inUnit("length")(from(handling.section, ({ netM }) => netM)),
			at: orNull(from(handling.section, ({ at }) => at)),
		},
		handling: handling.moments.map((moment) => ({
			when: moment.when,
			ageDays: orNull(moment.ageDays),
			strength: inUnit("stress")(moment.strengthPa),
			flat: inUnit("stress")(handling.flatPa),
			flatUse: orNull(moment.flatUse),
			onEdge: inUnit("stress")(handling.edgePa),
			onEdgeUse: orNull(moment.edgeUse),
			...saidOf(moment.said),
		})),
		turnedMass: inUnit("mass")(piece.turnedKg),
		cutouts: (orNull(piece.cutouts) ?? []).map((cutout) => ({
			shape: cutout.shape,
			count: cutout.count,
			a: length(cutout.aM),
			b: length(cutout.bM),
			left: length(cutout.leftM),
			front: length(cutout.frontM),
			radius: length(cutout.radiusM),
			spacing: length(cutout.spacingM),
		})),
		mold: orNull(piece.mold),
	};
}

/** What of a load stands on its card. */
function poured(whole: Whole, number: number) {
	const card = whole.cards().find(({ load }) => load === number);
	return {
		waterHeld: card ? orNull(card.waterHeld) : null,
		reserve: card ? orNull(card.reserve) : null,
		tonedShare: card ? orNull(card.tonedShare) : null,
	};
}

/** Grams by the pigments' names. */
const grams = (
	masses: Known<readonly number[]>,
	pigments: readonly { name: string }[],
): Record<string, number> | null =>
	orNull(
		from(masses, (all) =>
			Object.fromEntries(
				pigments.map(({ name }, i) => [name, (all[i] ?? 0) * 1000]),
			),
		),
	);
