/** One load's arithmetic, as the Pour card does it, for whichever load. */
import { InputError } from "../calc/errors";
import { sum } from "../calc/sum";
import { callFunction } from "../functions/call";
import type { SheetFunction } from "../functions/declare";
import { RESCALE_BATCH } from "../functions/loads";
import type { MixerLoad, Typed } from "./messages";
import { numberIn } from "./plain";
import type { JobRead } from "./readjob";

/** What every load of a job shares. */
export interface Shared {
	/** The load that the card shows. */
	chosen: number;
	/** Mass of each load. */
	masses: Readonly<Record<number, number>>;
	/** What the card wants of each ingredient of the chosen load, ice at the end. */
	planned: Typed[];
	binder: number | undefined;
	reserveShare: number;
	mixDivision: number;
}

export function sharedOf(read: JobRead): Shared {
	const masses: Record<number, number> = {};
	const numbers = read.cells("Job.load_numbers");
	read.cells("Job.load_masses").forEach(([mass], row) => {
		const load = numberIn(numbers[row]?.[0]);
		if (load !== undefined)
			masses[load] = (masses[load] ?? 0) + (numberIn(mass) ?? 0);
	});
	const setting = (key: string) => numberIn(read.studio.setting(key)) ?? 0;
	return {
		chosen: numberIn(read.cell("Pour card.load")) ?? 1,
		masses,
		planned: [
			...read.cells("Pour card.weigh_out"),
			...read.cells("Pour card.ice"),
		].map(([mass]) => numberIn(mass) ?? ""),
		binder: numberIn(read.cell("Tones.binder")),
		reserveShare: setting("reserve"),
		mixDivision: setting("mix_division"),
	};
}

/** The answer of a sheet function, or undefined where it refuses. */
export function answerOf(fn: SheetFunction, args: unknown[]): unknown {
	try {
		return callFunction(fn, args);
	} catch (error) {
		if (error instanceof InputError) return undefined;
		throw error;
	}
}

export const sumOf = (column: readonly Typed[]): number =>
	sum(column.map((mass) => numberIn(mass) ?? 0));

/** Which ingredients are ice: another load may be mixed without, so that its weights are not in proportion. */
const ICE_ROW = 12;

/** What the mix design asks of each ingredient of a load: the chosen one's in proportion. */
export function plannedFor(shared: Shared, load: number): Typed[] {
	const { planned, masses, chosen } = shared;
	if (load === chosen) return planned;
	const factor = (masses[load] ?? 0) / (masses[chosen] ?? 0);
	const ice = numberIn(planned[ICE_ROW]) ?? 0;
	if (!(factor > 0) || ice > 0) return [];
	return planned.map((mass) => (typeof mass === "number" ? mass * factor : ""));
}

type Worked = Pick<
	MixerLoad,
	"planned" | "weighOut" | "reserve" | "planMass" | "planBinder"
>;

/** What follows for the load from what was weighed of its ingredients and pulled off as a reserve. */
export function workedOut(
	shared: Shared,
	load: number,
	{ mixed, reserved }: { mixed: readonly Typed[]; reserved: Typed },
): Worked {
	const planned = plannedFor(shared, load);
	const nothing: Worked = {
		planned,
		weighOut: [],
		reserve: 0,
		planMass: "",
		planBinder: "",
	};
	const column = (values: readonly Typed[]) =>
		planned.map((_, row) => [values[row] ?? ""]);
	const answer = answerOf(RESCALE_BATCH, [column(planned), column(mixed)]);
	const whole = sumOf(planned);
	if (!Array.isArray(answer) || !(whole > 0) || shared.binder === undefined)
		return nothing;
	const weighOut = planned.map(
		(_, row) => (answer as Typed[][])[row]?.[0] ?? "",
	);
	const division = shared.mixDivision || 1;
	const reserve =
		Math.round((sumOf(weighOut) * shared.reserveShare) / division) * division;
	return {
		planned,
		weighOut,
		reserve,
		planMass: sumOf(weighOut) - (numberIn(reserved) ?? reserve),
		planBinder: (shared.binder * (shared.masses[load] ?? 0)) / whole,
	};
}
