/** Tones of one family: from a strongest tone down to the bare mix, evenly as they look. */
import type { Lab } from "./color";
import { InputError } from "./errors";

/** Less than this between the two ends, in L*, and no steps can be seen: half of people see 0.8 (Paravina et al. 2015). */
const LEAST_CONTRAST = 0.8;

/**
 * Doses of tones in even steps of L*, strongest first; the bare mix is the step after the last.
 *
 * All have the proportions of the strongest, so that one vessel makes them: a weaker one is pulled, then pigment is added.
 * Along such a line every channel only rises or only falls (Langmuir's curve), and so does L*: each step is found by halving.
 *
 * @throws InputError where the strongest looks as light as the bare mix.
 */
export function toneFamily(
	colorOf: (doses: readonly number[]) => Lab,
	strongest: readonly number[],
	count: number,
): number[][] {
	const scaled = (t: number) => strongest.map((dose) => dose * t);
	const bare = colorOf(scaled(0)).l;
	const contrast = colorOf(strongest).l - bare;
	if (Math.abs(contrast) < LEAST_CONTRAST)
		throw new InputError(
			`the strongest tone is as light as the bare mix (L* ${contrast.toFixed(1)} apart): there are no steps between them`,
		);
	return Array.from({ length: count }, (_, k) => {
		const wanted = contrast * (1 - k / count);
		let low = 0;
		let high = 1;
		if (k === 0) return [...strongest];
		while (high - low > 1e-9) {
			const t = (low + high) / 2;
			if (Math.abs(colorOf(scaled(t)).l - bare) < Math.abs(wanted)) low = t;
			else high = t;
		}
		return scaled((low + high) / 2);
	});
}
