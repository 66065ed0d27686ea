/** Maturity, strength against age, and how temperature changes the time there is. */
import { InputError, percent } from "./errors";
import { kelvin } from "./temperature";

export interface Interval {
	hours: number;
	/** Mean over the interval. */
	temperatureC: number;
}

const given = (log: readonly Interval[]): readonly Interval[] => {
	if (log.length === 0) throw new InputError("hours is blank");
	return log;
};

/**
 * Temperature-time factor, °C·h: Σ max(0, T − T₀) Δt.
 *
 * @throws InputError when the log is empty.
 * @source Nurse–Saul, ASTM C1074; datum T₀ of 0 °C for Type I cement without admixtures (from memory).
 */
export const temperatureTimeCH = (
	log: readonly Interval[],
	datumC: number,
): number =>
	given(log).reduce(
		(sum, { hours, temperatureC }) =>
			sum + Math.max(0, temperatureC - datumC) * hours,
		0,
	);

/** Speed of hardening at a temperature over that at a reference: exp(−Q (1/T − 1/Tr)), T in kelvin. */
const speed = (temperatureC: number, referenceC: number, qK: number): number =>
	Math.exp(-qK * (1 / kelvin(temperatureC) - 1 / kelvin(referenceC)));

/**
 * Age at the reference temperature that has the same maturity, h: Σ exp(−Q (1/T − 1/Tr)) Δt.
 *
 * @throws InputError when the log is empty.
 * @source ASTM C1074, Arrhenius form; Q of 5000 K for Type I cement without admixtures (from memory).
 */
export const equivalentAgeH = (
	log: readonly Interval[],
	referenceC: number,
	qK: number,
): number =>
	given(log).reduce(
		(sum, { hours, temperatureC }) =>
			sum + speed(temperatureC, referenceC, qK) * hours,
		0,
	);

/** Hours at a temperature that are worth so many at the reference. */
export const hoursAt = (
	hours: number,
	temperatureC: number,
	referenceC: number,
	qK: number,
): number => hours / speed(temperatureC, referenceC, qK);

/** Days at the reference temperature worth the first days of an age; what the log does not cover counts as at the reference. */
export function equivalentDays(
	log: readonly Interval[],
	ageDays: number,
	referenceC: number,
	qK: number,
): number {
	let leftH = ageDays * 24;
	let equivalentH = 0;
	for (const { hours, temperatureC } of log) {
		const within = Math.min(hours, leftH);
		equivalentH += speed(temperatureC, referenceC, qK) * within;
		leftH -= within;
	}
	return (equivalentH + leftH) / 24;
}

/** s of EN 1992-1-1, 3.1.2(6): cements of class R, N and S. */
const CEMENT_S = { rapid: 0.2, normal: 0.25, slow: 0.38 };

export type Cement = keyof typeof CEMENT_S;

export const CEMENTS = Object.keys(CEMENT_S) as Cement[];

/**
 * Share of the 28-day strength at 20 °C: exp(s (1 − √(28 / t))).
 *
 * @source EN 1992-1-1:2004, eq. 3.2, which asks for tests below 3 days.
 */
export const strengthShare = (ageDays: number, cement: Cement): number =>
	Math.exp(CEMENT_S[cement] * (1 - Math.sqrt(28 / ageDays)));

/**
 * Share of the 28-day tensile strength, and so of the flexural one, at 20 °C: β^α, β as in `strengthShare`, α 1 below 28 days
 * and 2/3 from then on.
 *
 * @source EN 1992-1-1:2004, 3.1.2(9), eq. 3.4.
 */
export const tensileShare = (ageDays: number, cement: Cement): number =>
	strengthShare(ageDays, cement) ** (ageDays < 28 ? 1 : 2 / 3);

/**
 * Age at 20 °C that reaches a share of the 28-day strength, days: 28 / (1 − ln(share) / s)².
 *
 * @throws InputError when the share is eˢ or more, which the formula never reaches.
 * @source EN 1992-1-1:2004, eq. 3.2, solved for the age.
 */
export function ageDays(share: number, cement: Cement): number {
	const s = CEMENT_S[cement];
	const left = 1 - Math.log(share) / s;
	if (left <= 0)
		throw new InputError(
			`share must be below ${percent(Math.exp(s), 4)}, which ${cement} cement never reaches by this formula, got ${percent(share, 4)}`,
		);
	return 28 / left ** 2;
}

/** Q of the trial: ASTM C1074's 5000 K for Type I cement. */
const WORKING_Q_K = 5000;

/** Working time at another temperature, min: tested minutes × exp(5000 (1/T − 1/T tested)), T in kelvin. */
export const workingTimeMin = (trial: {
	minutes: number;
	testedC: number;
	mixC: number;
}): number => trial.minutes / speed(trial.mixC, trial.testedC, WORKING_Q_K);
