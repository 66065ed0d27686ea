/** What the job's tabs need beside the trade's own arithmetic: castings one by one, and a number for a plan. */
import type { Tone } from "./tones";

/** Each casting of a job, a piece repeated as often as it is poured. */
export const castings = (
	pieces: readonly { name: string; quantity: number; massKg: number }[],
): { name: string; massKg: number }[] =>
	pieces.flatMap(({ name, quantity, massKg }) =>
		Array.from({ length: quantity }, () => ({ name, massKg })),
	);

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
 * Hash: FNV-1a, 32 bit (Fowler, Noll, Vo; offset 2166136261, prime 16777619).
 */
export function planNumber(
	tones: readonly Tone[],
	pigments: readonly string[],
	{ parts, binderShare }: PlanMix = { parts: [], binderShare: undefined },
): number {
	const total = tones.reduce((sum, { share }) => sum + share, 0);
	const rows = tones.map(({ name, share, doses }) => [
		name.toLowerCase(),
		(share / total).toPrecision(9),
		...doses.map((dose) => dose.toPrecision(9)),
	]);
	const all = parts.reduce((sum, part) => sum + part, 0);
	const mix = [
		...parts.map((part) => part / all),
		...(binderShare === undefined ? [] : [binderShare]),
	].map((number) => number.toPrecision(9));
	const text = JSON.stringify([
		rows,
		pigments.map((name) => name.toLowerCase()),
		...(mix.length > 0 ? [mix] : []),
	]);
	let hash = 2166136261;
	for (let i = 0; i < text.length; i++)
		hash = Math.imul(hash ^ text.charCodeAt(i), 16777619);
	return 1000 + ((hash >>> 0) % 9000);
}
