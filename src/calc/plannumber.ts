/** A number by which a change of the plan is noticed. */
import { nameKey } from "./names";
import { sum } from "./sum";
import type { Tone } from "./tones";

/** What a plan rests on besides its tones. */
interface PlanMix {
	/** Of each ingredient; only their proportions count. */
	parts: readonly number[];
	binderShare: number | undefined;
}

/**
 * A number from 1000 to 9999 that changes with the tones: names, shares of the whole, doses and pigments; and with the
 * mix, where one is given.
 *
 * Two plans share a number once in 9000; it is for noticing a change, not for proving that there is none.
 */
export function planNumber(
	tones: readonly Tone[],
	pigments: readonly string[],
	{ parts, binderShare }: PlanMix,
): number {
	const total = sum(tones.map(({ share }) => share));
	const rows = tones.map(({ name, share, doses }) => [
		nameKey(name),
		(share / total).toPrecision(9),
		...doses.map((dose) => dose.toPrecision(9)),
	]);
	const all = sum(parts);
	const mix = [
		...parts.map((part) => part / all),
		...(binderShare === undefined ? [] : [binderShare]),
	].map((number) => number.toPrecision(9));
	const text = JSON.stringify([
		rows,
		pigments.map(nameKey),
		...(mix.length > 0 ? [mix] : []),
	]);
	return 1000 + (fnv1a(text) % 9000);
}

/**
 * Hash of a text, 32 bit.
 *
 * @source FNV-1a (Fowler, Noll, Vo), offset 2166136261, prime 16777619; of characters, where it is of bytes.
 */
function fnv1a(text: string): number {
	let hash = 2166136261;
	for (let i = 0; i < text.length; i++)
		hash = Math.imul(hash ^ text.charCodeAt(i), 16777619);
	return hash >>> 0;
}
