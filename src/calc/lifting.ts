/** The revised NIOSH lifting equation: what one person may lift with two hands. */
import { InputError } from "./errors";

/** Lifts a minute of the rows of Table 5, then its columns: up to 1, 2 and 8 hours, hands below and from 30 in (75 cm). */
const RATES = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];
// biome-ignore format: the table as it is printed
const FREQUENCY = [
	{ hours: 1,
		low:  [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
		high: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28] },
	{ hours: 2,
		low:  [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0, 0, 0, 0, 0],
		high: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21, 0, 0, 0] },
	{ hours: 8,
		low:  [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0],
		high: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0] },
];

/** Table 7: hands below 30 in (75 cm), and from there on. */
const GRIP = {
	good: { low: 1, high: 1 },
	fair: { low: 0.95, high: 1 },
	poor: { low: 0.9, high: 0.9 },
};

export type Grip = keyof typeof GRIP;

export const GRIPS = Object.keys(GRIP) as Grip[];

interface Form {
	/** Load constant. */
	load: number;
	/** Nearest and farthest reach. */
	near: number;
	far: number;
	/** Height of the hands at which lifting is easiest, and how fast it gets harder. */
	knuckle: number;
	perHeight: number;
	highest: number;
	/** Distance multiplier: 0.82 + perTravel / D. */
	perTravel: number;
	shortest: number;
	longest: number;
}

/** In cm and kg, in inches and pounds: published side by side, and no exact conversions of each other. */
const CM_KG: Form = {
	load: 23,
	near: 25,
	far: 63,
	knuckle: 75,
	perHeight: 0.003,
	highest: 175,
	perTravel: 4.5,
	shortest: 25,
	longest: 175,
};
const IN_LB: Form = {
	load: 51,
	near: 10,
	far: 25,
	knuckle: 30,
	perHeight: 0.0075,
	highest: 70,
	perTravel: 1.8,
	shortest: 10,
	longest: 70,
};

interface Task {
	twistDeg: number;
	liftsPerMinute: number;
	hours: number;
	grip: Grip;
}

/**
 * Recommended weight limit for one person, kg: 23 × HM VM DM AM FM CM; 0 where a multiplier is 0.
 *
 * HM 25/H, VM 1 − 0.003 |V − 75|, DM 0.82 + 4.5/D, AM 1 − 0.0032 A, FM by a straight line between the rows of
 * Table 5, CM of Table 7. H up to 25 cm counts as 25, D likewise; 0 beyond H 63 cm, V 175 cm, D 175 cm, A 135°,
 * F 15/min.
 *
 * @throws InputError when the work lasts longer than 8 hours.
 * @source Waters, Putz-Anderson, Garg, Applications Manual for the Revised NIOSH Lifting Equation, Pub. 94-110.
 */
export const liftLimitKg = (
	task: Task & { reachCm: number; heightCm: number; travelCm: number },
): number => limitIn(CM_KG, task.reachCm, task.heightCm, task.travelCm, task);

/**
 * Recommended weight limit for one person, lb: 51 × HM VM DM AM FM CM; 0 where a multiplier is 0.
 *
 * HM 10/H, VM 1 − 0.0075 |V − 30|, DM 0.82 + 1.8/D, the others as in `liftLimitKg`; 0 beyond H 25 in, V 70 in, D 70 in.
 *
 * @throws InputError when the work lasts longer than 8 hours.
 * @source The same.
 */
export const liftLimitLb = (
	task: Task & { reachIn: number; heightIn: number; travelIn: number },
): number => limitIn(IN_LB, task.reachIn, task.heightIn, task.travelIn, task);

/** Lengths come from meters: their last bits must not push 25 in past 25 in. */
const SLACK = 1e-9;

const past = (value: number, limit: number): boolean => value > limit + SLACK;

function limitIn(
	form: Form,
	reach: number,
	height: number,
	travel: number,
	task: Task,
): number {
	const frequency = frequencyMultiplier(form, height, task);
	if (
		past(reach, form.far) ||
		past(height, form.highest) ||
		past(travel, form.longest) ||
		past(task.twistDeg, 135)
	)
		return 0;
	return (
		form.load *
		(form.near / Math.max(form.near, reach)) *
		(1 - form.perHeight * Math.abs(height - form.knuckle)) *
		(0.82 + form.perTravel / Math.max(form.shortest, travel)) *
		(1 - 0.0032 * task.twistDeg) *
		frequency *
		GRIP[task.grip][level(form, height)]
	);
}

const level = (form: Form, height: number): "low" | "high" =>
	height < form.knuckle - SLACK ? "low" : "high";

function frequencyMultiplier(form: Form, height: number, task: Task): number {
	const column = FREQUENCY.find(({ hours }) => task.hours <= hours);
	if (!column)
		throw new InputError(`hours must be 8 or less, got ${task.hours}`);
	const rate = Math.max(task.liftsPerMinute, RATES[0] ?? 0);
	const multipliers = column[level(form, height)];
	const upper = RATES.findIndex((row) => rate <= row);
	if (upper === -1) return 0;
	const low = RATES[upper - 1] ?? rate;
	const high = RATES[upper] ?? rate;
	const atHigh = multipliers[upper] ?? 0;
	const atLow = multipliers[upper - 1] ?? atHigh;
	return high === low
		? atHigh
		: atLow + ((rate - low) / (high - low)) * (atHigh - atLow);
}
