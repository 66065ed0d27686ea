/** What a job whose fields are fine is refused for: the studio has it not, or the arithmetic cannot work it out. */
import { quoted } from "../calc/errors";
import { nameKey, sameName } from "../calc/names";
import { batchShares } from "../calc/tones";
import type { Basis } from "./answers/basis";
import { isKnown } from "./answers/known";
import { MOST } from "./jobfile";
import { type Mistake, sentenceOf } from "./mistakes";
import { cutoutMistakes, pieceMistakes } from "./piecerefusals";
import { isBlank } from "./reading/cells";
import { mixNames, studioPigments } from "./studiofile";

/** Each at its field or its row. */
export const refusals = (basis: Basis): Mistake[] => [
	...mixMistakes(basis),
	...pieceMistakes(basis),
	...cutoutMistakes(basis),
	...knockoutMistakes(basis),
	...pigmentMistakes(basis),
	...toneMistakes(basis),
];

function mixMistakes({ given: { studio, job } }: Basis): Mistake[] {
	const mix = String(job.mix ?? "");
	const names = mixNames(studio);
	return isBlank(mix) || names.some((name) => sameName(name, mix))
		? []
		: [{ path: "mix", say: notOn("mix ", mix, "Mixes", names) }];
}

const notOn = (
	what: string,
	name: string,
	tab: string,
	names: readonly string[],
): string =>
	`${what}${quoted(name)} is not on the ${tab} tab: there are ${names.map(quoted).join(", ")}`;

/** A knockout without a size is refused: nothing could be said of it. */
const knockoutMistakes = ({ knockouts, mix }: Basis): Mistake[] =>
	knockouts.flatMap(({ volumeM3, upliftKg }, index) => {
		const path = `knockouts[${index}]`;
		if ("missing" in volumeM3)
			return [{ path, say: `type ${volumeM3.missing}` }];
		if ("look" in volumeM3) return [{ path, say: volumeM3.look }];
		return isKnown(mix.densityKgPerM3) && "look" in upliftKg
			? [{ path, say: upliftKg.look }]
			: [];
	});

function pigmentMistakes({ given, pigments }: Basis): Mistake[] {
	const { studio, job } = given;
	const names = studioPigments(studio);
	const unknown = (name: string, path: string): Mistake[] =>
		names.some((known) => sameName(known, name))
			? []
			: [{ path, say: notOn("", name, "Pigments", names) }];
	const dosed = job.tones.flatMap(({ doses = {} }, index) =>
		Object.entries(doses)
			.filter(([, dose]) => !isBlank(dose))
			.flatMap(([name]) => unknown(name, `tones[${index}].doses.${name}`)),
	);
	const columns = (job.pigments ?? []).flatMap((name, index) =>
		unknown(name, `pigments[${index}]`),
	);
	const most =
		pigments.length > MOST.pigments
			? [
					{
						path: "tones",
						say: `the tones use ${pigments.length} pigments (${pigments.map(({ name }) => name).join(", ")}): there is room for ${MOST.pigments}`,
					},
				]
			: [];
	return [...columns, ...dosed, ...most];
}

function toneMistakes({ given: { job } }: Basis): Mistake[] {
	const keys = job.tones.map(({ name }) => nameKey(String(name ?? "")));
	const twice = keys.flatMap((key, index) => {
		const first = keys.indexOf(key);
		return key === "" || first === index
			? []
			: [
					{
						path: `tones[${index}].name`,
						say: `name must be unique, ${quoted(String(job.tones[index]?.name))} is tone ${first + 1} too`,
					},
				];
	});
	// a share that nobody has typed yet is no mistake
	const shares = job.tones.map(({ share }) => share);
	const none = shares.every((share) => typeof share === "number")
		? sentenceOf(() =>
				batchShares(shares.map((share) => ({ name: "", share, doses: [] }))),
			)
		: undefined;
	return none ? [...twice, { path: "tones[0].share", say: none }] : twice;
}
