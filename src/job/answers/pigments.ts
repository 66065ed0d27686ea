/** What the studio says of each pigment of the job. */
import { sameName } from "../../calc/names";
import { PIGMENT } from "../fields/pigment";
import { isBlank } from "../reading/cells";
import type { Given } from "./given";
import { from, is, isKnown, type Known, look, missing, readRow } from "./known";
import type { MixAnswers } from "./mix";

/** The most pigment that ASTM C979 allows, as a share of cement, where its maker states nothing. */
const MOST_PIGMENT = 0.1;

export interface PigmentAnswer {
	name: string;
	/** In what its maker states doses. */
	basis: Known<"binder" | "cement" | "dry mix">;
	/** Share of cement. */
	maximum: Known<number>;
	/** Share of pigment in what is bought. */
	solids: Known<number>;
	/** Weighed with its water over dry. */
	wetPerDry: Known<number>;
	/** A dose as typed times this is a dose of binder. */
	toBinder: Known<number>;
	/** Of what is bought. */
	pricePerGram: Known<number>;
}

/** The pigments that the tones of the job dose, or that have a column, in order of their first appearance. */
export function pigmentNames({ job }: Pick<Given, "job">): string[] {
	const dosed = job.tones.flatMap(({ doses = {} }) =>
		Object.entries(doses)
			.filter(([, dose]) => !isBlank(dose))
			.map(([name]) => name),
	);
	const names: string[] = [];
	for (const name of [...(job.pigments ?? []), ...dosed])
		if (name !== "" && !names.some((one) => sameName(one, name)))
			names.push(name);
	return names;
}

export const pigmentAnswers = (
	given: Given,
	mix: MixAnswers,
): PigmentAnswer[] =>
	pigmentNames(given).map((name) => pigmentAnswer(given, mix, name));

export function pigmentAnswer(
	{ studio, units }: Given,
	mix: MixAnswers,
	name: string,
): PigmentAnswer {
	const row = studio.pigments.find((one) =>
		sameName(String(one.name ?? ""), name),
	);
	if (!row) {
		const absent = look(`${name} is not on the Pigments tab: add it there`);
		return {
			name,
			basis: absent,
			maximum: absent,
			solids: absent,
			wetPerDry: absent,
			toBinder: absent,
			pricePerGram: absent,
		};
	}
	const typed = readRow(PIGMENT, row, units);
	const read =
		"look" in typed
			? look(`${name} on the Pigments tab: ${typed.look}`)
			: typed;
	const basis = from(read, (pigment) => pigment.basis ?? "binder");
	const solids: Known<number> =
		isKnown(read) && read.is.solids === undefined && read.is.form === "liquid"
			? look(`${name}: type the share of pigment in it on the Pigments tab`)
			: from(read, (pigment) => pigment.solids ?? 1);
	return {
		name: String(row.name ?? name),
		basis,
		maximum: from(read, (pigment) => pigment.maximum || MOST_PIGMENT),
		solids,
		wetPerDry: isKnown(solids)
			? from(read, ({ water = 0 }) => 1 / solids.is + water)
			: solids,
		toBinder: isKnown(basis)
			? {
					binder: is(1),
					cement: mix.cementShare,
					"dry mix": mix.dryMixShare,
				}[basis.is]
			: basis,
		pricePerGram:
			isKnown(read) &&
			(read.is.pack === undefined || read.is.packPrice === undefined)
				? missing(`a price of ${name} on the Pigments tab`)
				: from(
						read,
						({ pack = 1, packPrice = 0 }) => packPrice / (pack * 1000),
					),
	};
}
