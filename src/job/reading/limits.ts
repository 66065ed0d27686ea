/** What is allowed of a number, and the sentence that says so in the unit the person types. */
import { InputError } from "../../calc/errors";
import { came, numberIn, plain } from "./cells";
import { fromSi, type Quantity, type UnitSystem, unitName } from "./units";

/** What is allowed, in SI. */
export interface Limits {
	above?: number;
	min?: number;
	below?: number;
	max?: number;
	whole?: boolean;
}

/** The SI value when it is within the limits, else a sentence in the unit the person types. */
export function limited(
	name: string,
	value: number,
	cell: unknown,
	limits: Limits,
	unit: Quantity | undefined,
	units: UnitSystem,
): number {
	if (within(value, limits)) return value;
	const show = (bound: number) =>
		unit
			? `${plain(fromSi(bound, unit, units))} ${unitName(unit, units)}`
			: plain(bound);
	throw new InputError(
		`${name} must be ${limitWords(limits, show)}, got ${came(cell)}`,
	);
}

/** A share: a number from 0 to 1 that people see as a percentage. */
export function shareIn(name: string, cell: unknown, limits: Limits): number {
	const value = numberIn(name, cell);
	const { above, below, min, max } = limits;
	const allowed: Limits = {
		above,
		below,
		min: above === undefined ? (min ?? 0) : min,
		max: below === undefined ? (max ?? 1) : max,
	};
	if (within(value, allowed)) return value;
	const hint = within(value / 100, allowed)
		? ` (type ${plain(value)}% or ${plain(value / 100)})`
		: "";
	throw new InputError(
		`${name} must be ${limitWords(allowed, percent)}, got ${percent(value)}${hint}`,
	);
}

const percent = (share: number): string => `${plain(share * 100)}%`;

function limitWords(
	{ above, min, below, max, whole }: Limits,
	show: (bound: number) => string,
): string {
	const kind = whole ? "a whole number" : "";
	const low = min ?? above;
	const high = max ?? below;
	if (low !== undefined && high !== undefined)
		return `${kind} between ${show(low)} and ${show(high)}${exclusions(above, below, show)}`.trim();
	if (above !== undefined) return `${kind} above ${show(above)}`.trim();
	if (min !== undefined) return `${kind && `${kind}, `}${show(min)} or more`;
	if (below !== undefined) return `${kind} below ${show(below)}`.trim();
	if (max !== undefined) return `${kind && `${kind}, `}${show(max)} or less`;
	return kind;
}

function exclusions(
	above: number | undefined,
	below: number | undefined,
	show: (bound: number) => string,
): string {
	const out = [above, below]
		.filter((bound): bound is number => bound !== undefined)
		.map(show);
	return out.length ? `, not ${out.join(" or ")}` : "";
}

const within = (
	value: number,
	{ above, min, below, max, whole }: Limits,
): boolean =>
	(above === undefined || value > above) &&
	(min === undefined || value >= min) &&
	(below === undefined || value < below) &&
	(max === undefined || value <= max) &&
	(!whole || Number.isInteger(value));
