/** Two-constant Kubelka–Munk on three channels: the color of a mix from what its pigments absorb and scatter. */
import { type Channels, channelsOf, type Lab, labOfChannels } from "./color";

/**
 * A pigment's strength in a channel of the mix, for u from 0 (weakest swatch) to 1 (strongest).
 *
 * q(u) = (q₀ + κu) / (1 + σu): κ absorbs, σ scatters, both as a share of what the mix scatters.
 */
export interface Strength {
	kappa: number;
	sigma: number;
}

/** Readings beyond these are taken as these: K/S has no meaning at 0 and 1. No source. */
const DARKEST = 0.002;
const LIGHTEST = 0.999;

const limited = (reflectance: number): number =>
	Math.min(LIGHTEST, Math.max(DARKEST, reflectance));

/**
 * Absorption over scattering of an opaque layer: (1 − R)² / 2R.
 *
 * @source Kubelka and Munk (1931), in the form of Allen (1980), equation 19.
 */
export const absorptionOf = (reflectance: number): number =>
	(1 - reflectance) ** 2 / (2 * reflectance);

/**
 * Reflectance of an opaque layer: 1 + q − √(q² + 2q), written so that it does not cancel.
 *
 * @source Allen (1980), equation 20.
 */
export const reflectanceOf = (absorption: number): number =>
	1 / (1 + absorption + Math.sqrt(absorption ** 2 + 2 * absorption));

export const absorptions = (lab: Lab): Channels => {
	const [x, y, z] = channelsOf(lab);
	return [
		absorptionOf(limited(x)),
		absorptionOf(limited(y)),
		absorptionOf(limited(z)),
	];
};

/** The color of a mix of the pigments, each at its u. */
export function mixedColor(
	base: Channels,
	pigments: readonly { strengths: readonly Strength[]; u: number }[],
): Lab {
	const channel = (j: number): number => {
		let absorbed = base[j] ?? 0;
		let scattered = 1;
		for (const { strengths, u } of pigments) {
			absorbed += (strengths[j]?.kappa ?? 0) * u;
			scattered += (strengths[j]?.sigma ?? 0) * u;
		}
		return reflectanceOf(absorbed / scattered);
	};
	return labOfChannels([channel(0), channel(1), channel(2)]);
}
