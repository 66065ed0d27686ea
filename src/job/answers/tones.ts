/** The tones of the job: their part of the mix, their doses dry and as weighed, and what each takes. */
import { facedVolumeM3 } from "../../calc/facedepth";
import { pigmentHeadroom } from "../../calc/headroom";
import { nameKey, sameName } from "../../calc/names";
import { sum } from "../../calc/sum";
import { batchShares, type Tone, toneWeights } from "../../calc/tones";
import { TONE } from "../fields/tone";
import { DOSE, type ToneInput } from "../jobfile";
import { isBlank, lengthText } from "../reading/cells";
import { shareIn } from "../reading/limits";
import type { Given } from "./given";
import {
	all,
	attempt,
	flat,
	from,
	fromBoth,
	is,
	type Known,
	look,
	missing,
	readRow,
	type Said,
	saidOf,
} from "./known";
import { readLength } from "./lengths";
import { type Load, type LoadsAnswer, overPieces } from "./loads";
import type { MixAnswers } from "./mix";
import type { PieceAnswer } from "./pieces";
import type { PigmentAnswer } from "./pigments";

export interface TonesAnswer extends ToneShares {
	/** Tones with their shares as typed and dry doses of binder; in a mold lay-up the shares are of the face. */
	typed: Known<readonly Tone[]>;
	/** Of one load: in a mold lay-up by its own castings. */
	ofLoad(load: Load): ToneShares;
	rows: readonly ToneAnswer[];
}

/** The tones of the whole job, or of one load. */
export interface ToneShares {
	/** Tones with their shares of all the mix and dry doses of binder. */
	dry: Known<readonly Tone[]>;
	/** The same, doses as they go on the scale: pigment with its water. */
	asWeighed: Known<readonly Tone[]>;
	/** Share of the mix that is toned face; of a mold lay-up only. */
	faceShare: Known<number>;
	/** Water that comes with the pigment, share of the undosed mix. */
	pigmentWater: Known<number>;
}

/** In SI. */
export interface ToneAnswer {
	name: string;
	/** Undosed mix for the whole job. */
	undosedKg: Known<number>;
	/** On the scale, pigment and its water included. */
	scaleKg: Known<number>;
	/** Each pigment with its water. */
	weighedKg: Known<readonly number[]>;
	/** Each pigment dry. */
	dryKg: Known<readonly number[]>;
	/** How far the total dose is below what is allowed, share of cement. */
	headroom: Known<number>;
	/** By mass, the water of its pigment included. */
	waterBinder: Known<number>;
	/** How much more water it has than the tone that has least. */
	waterSaid: Said;
}

type UnsaidTone = Omit<ToneAnswer, "waterSaid">;

/** What the tones are worked out from. */
export interface ToneInputs {
	given: Given;
	mix: MixAnswers;
	pieces: readonly PieceAnswer[];
	loads: LoadsAnswer;
	pigments: readonly PigmentAnswer[];
}

export function tonesAnswer(inputs: ToneInputs): TonesAnswer {
	const { given, mix, loads } = inputs;
	const typed = typedTones(inputs);
	const of = (faceShare: Known<number>): ToneShares =>
		toneShares(inputs, typed, faceShare);
	const shares = of(faceShareOf(inputs, allParts(inputs)));
	const { dry, asWeighed, pigmentWater } = shares;
	const weights = (tones: Known<readonly Tone[]>) =>
		from(
			all([tones, loads.batchKg, mix.binderShare, pigmentWater] as [
				typeof tones,
				Known<number>,
				Known<number>,
				Known<number>,
			]),
			([each, batchKg, binderShare, water]) =>
				toneWeights({
					tones: each,
					massKg: batchKg * (1 - water),
					binderShare: binderShare / (1 - water),
				}),
		);
	const wetWeights = weights(asWeighed);
	const dryWeights = weights(dry);
	const rows = given.job.tones.map(
		(row, i): UnsaidTone => ({
			name: String(row.name ?? "").trim(),
			undosedKg: from(wetWeights, (all) => all[i]?.undosedKg ?? 0),
			scaleKg: from(wetWeights, (all) => all[i]?.scaleKg ?? 0),
			weighedKg: from(wetWeights, (all) => all[i]?.pigmentsKg ?? []),
			dryKg: from(dryWeights, (all) => all[i]?.pigmentsKg ?? []),
			headroom: headroomOf(inputs, dry, i),
			waterBinder: waterBinderOf(mix, shares, i),
		}),
	);
	return {
		typed,
		...shares,
		ofLoad: (load) =>
			isLayUp(given) ? of(faceShareOf(inputs, is(partsOf(load)))) : shares,
		rows: rows.map((row) => ({ ...row, waterSaid: waterSaid(row, rows) })),
	};
}

/** The mix's, less the water that is held back of it, and what comes with the tone's own pigment. */
const waterBinderOf = (
	mix: MixAnswers,
	{ dry, asWeighed, pigmentWater }: ToneShares,
	tone: number,
): Known<number> =>
	from(
		all([mix.waterBinder, mix.binderShare, pigmentWater, dry, asWeighed] as [
			Known<number>,
			Known<number>,
			Known<number>,
			typeof dry,
			typeof asWeighed,
		]),
		([ratio, binderShare, held, dryTones, wetTones]) =>
			ratio -
			held / binderShare +
			sum(wetTones[tone]?.doses ?? []) -
			sum(dryTones[tone]?.doses ?? []),
	);

/** Tones further apart than this differ in color, strength and flow. */
const WATER_APART = 0.05;

const waterSaid = (
	{ waterBinder }: UnsaidTone,
	rows: readonly UnsaidTone[],
): Said =>
	saidOf(
		flat(
			fromBoth(
				waterBinder,
				all(rows.map((row) => row.waterBinder)),
				(own, ratios) => {
					const least = Math.min(...ratios);
					return own > least * (1 + WATER_APART)
						? look(
								`${Math.round((own / least - 1) * 100)}% more than ${rows[ratios.indexOf(least)]?.name}: it comes out lighter and weaker; wet its pigment with less, or give the others as much water`,
							)
						: is("");
				},
			),
		),
	);

function toneShares(
	{ given, mix, pigments }: ToneInputs,
	typed: Known<readonly Tone[]>,
	faceShare: Known<number>,
): ToneShares {
	const dry = withBacking(given, typed, faceShare);
	const wet = all(pigments.map(({ wetPerDry }) => wetPerDry));
	const asWeighed = fromBoth(dry, wet, (tones, factors) =>
		tones.map((tone) => ({
			...tone,
			doses: tone.doses.map((dose, i) => dose * (factors[i] ?? 1)),
		})),
	);
	const pigmentWater = from(
		all([dry, asWeighed, mix.binderShare] as [
			typeof dry,
			typeof asWeighed,
			Known<number>,
		]),
		([dryTones, wetTones, binder]) => {
			const shares = batchShares(wetTones);
			return (
				binder *
				sum(
					wetTones.map(
						({ doses }, i) =>
							(shares[i] ?? 0) * (sum(doses) - sum(dryTones[i]?.doses ?? [])),
					),
				)
			);
		},
	);
	return { dry, asWeighed, faceShare, pigmentWater };
}

/** The tones as typed, doses turned into shares of binder. */
function typedTones({ given, pigments }: ToneInputs): Known<readonly Tone[]> {
	const { tones } = given.job;
	if (tones.length === 0)
		return missing("name the tones, and give each its share");
	const twice = tones.find(({ name }, i) =>
		tones.some(
			(other, at) =>
				at < i &&
				nameKey(String(other.name ?? "")) === nameKey(String(name ?? "")),
		),
	);
	if (twice) return look(`two tones are named ${twice.name}`);
	const { pigments: columns = [] } = given.job;
	const again = columns.find((name, i) =>
		columns.some((other, at) => at < i && sameName(other, name)),
	);
	if (again) return look(`two columns of doses are for ${again}`);
	return all(tones.map((tone) => typedTone(given, tone, pigments)));
}

function typedTone(
	{ units }: Given,
	tone: ToneInput,
	pigments: readonly PigmentAnswer[],
): Known<Tone> {
	const name = String(tone.name ?? "").trim();
	const row = readRow(TONE, tone, units);
	const read = "look" in row ? look(`${name}: ${row.look}`) : row;
	if (name === "") return missing("the name of a tone");
	if (isBlank(tone.share)) return missing(`the share of ${name}`);
	if (!isBlank(tone.doses?.[""]))
		return look(`a dose of ${name} stands under no pigment: name it above`);
	const doses = all(
		pigments.map((pigment) =>
			fromBoth(
				attempt(() => doseIn(tone, pigment.name)),
				pigment.toBinder,
				(dose, factor) => dose * factor,
			),
		),
	);
	return fromBoth(read, doses, ({ share = 0 }, each) => ({
		name,
		share,
		doses: each,
	}));
}

/** A dose as it was typed; none where nothing was. */
function doseIn({ name, doses = {} }: ToneInput, pigment: string): number {
	const typed = Object.entries(doses).find(([key]) => sameName(key, pigment));
	return typed === undefined || isBlank(typed[1])
		? 0
		: shareIn(`the dose of ${pigment} in ${name}`, typed[1], DOSE.limits ?? {});
}

/** Castings, and how much of the mix each takes: in any unit, the same for all. */
type Parts = readonly { name: string; part: number }[];

/** All castings of the job. */
const allParts = ({ given, pieces }: ToneInputs): Known<Parts> =>
	overPieces(given, pieces, ({ name, sizes }) =>
		from(sizes, ({ volumeAllM3 }) => ({ name, part: volumeAllM3 })),
	);

const partsOf = ({ parts }: Load): Parts =>
	parts.map(({ name, massKg }) => ({ name, part: massKg }));

/** Share of the mix of these castings that lies within the typed depth of their faces, edges and drops. */
function faceShareOf(
	{ given, pieces }: ToneInputs,
	parts: Known<Parts>,
): Known<number> {
	const { job } = given;
	if (isBlank(job.faceDepth)) return missing("how deep the toned face is");
	const depth = readLength(given, "the toned face", job.faceDepth);
	const faced = fromBoth(depth, parts, (depthM, own) =>
		all(
			own.map(({ name, part }) => {
				const one = pieces.find((each) => sameName(each.name, name));
				return one
					? from(
							all([one.piece, one.cutouts, one.sizes] as [
								typeof one.piece,
								typeof one.cutouts,
								typeof one.sizes,
							]),
							([piece, cutouts, { volumeM3 }]) => ({
								part,
								share:
									volumeM3 > 0
										? facedVolumeM3(
												piece,
												cutouts,
												depthM,
												lengthText(given.units),
											) / volumeM3
										: 0,
							}),
						)
					: look(`there is no piece ${name}`);
			}),
		),
	);
	return from(flat(faced), (each) => {
		const whole = sum(each.map(({ part }) => part));
		return whole > 0
			? sum(each.map(({ part, share }) => part * share)) / whole
			: 0;
	});
}

export const isLayUp = ({ job }: Given): boolean =>
	sameName(String(job.placing ?? ""), "mold lay-up");

/** In a mold lay-up the toned face is a part of the mix, and one tone backs the rest. */
function withBacking(
	given: Given,
	typed: Known<readonly Tone[]>,
	faceShare: Known<number>,
): Known<readonly Tone[]> {
	if (!isLayUp(given)) return typed;
	const problem = backingProblem(given);
	if (problem) return look(problem);
	const backing = String(given.job.backedWith ?? "");
	return fromBoth(typed, faceShare, (tones, face) => {
		const total = sum(tones.map(({ share }) => share));
		return tones.map((tone) => ({
			...tone,
			share:
				(total > 0 ? (tone.share / total) * face : 0) +
				(sameName(tone.name, backing) ? 1 - face : 0),
		}));
	});
}

/** Whether the tone that backs a lay-up is one of the job's. */
export function backingProblem(given: Given): string | undefined {
	const { job } = given;
	if (!isLayUp(given)) return undefined;
	if (isBlank(job.faceDepth)) return "type how deep the toned face is";
	return job.tones.some(({ name }) =>
		sameName(String(name ?? ""), String(job.backedWith ?? "")),
	)
		? undefined
		: "choose the tone that backs it";
}

function headroomOf(
	{ mix, pigments }: ToneInputs,
	dry: Known<readonly Tone[]>,
	tone: number,
): Known<number> {
	const maxima = all(pigments.map(({ maximum }) => maximum));
	return from(
		all([dry, maxima, mix.cementShare] as [
			typeof dry,
			typeof maxima,
			Known<number>,
		]),
		([tones, most, cementShare]) =>
			pigmentHeadroom({
				doses: tones[tone]?.doses ?? [],
				maxima: most,
				cementShare,
			}),
	);
}

/** The mean dose of binder of each pigment, all tones that are seen together. */
export const meanDoses = ({ typed }: TonesAnswer): Known<readonly number[]> =>
	from(typed, (tones) => {
		const total = sum(tones.map(({ share }) => share));
		const pigments = tones[0]?.doses.length ?? 0;
		return Array.from({ length: pigments }, (_, i) =>
			sum(tones.map(({ share, doses }) => (share / total) * (doses[i] ?? 0))),
		);
	});
