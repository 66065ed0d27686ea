/**
 * Numbers from 0 to 1, the same for the same seed.
 *
 * @source mulberry32, Tommy Ettinger (2017), public domain.
 */
export function uniform(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/**
 * Normally distributed numbers of mean 0 and standard deviation 1, the same for the same seed.
 *
 * @source Box and Muller, Annals of Mathematical Statistics 29 (1958).
 */
export function normal(seed: number): () => number {
	const next = uniform(seed);
	return () =>
		Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}
