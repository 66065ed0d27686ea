/** The Pour card and the tones as the panel at the mixer needs them. */
import { NOTES } from "./cardcells";
import type { Fresh, MixerLoad, MixerState, Typed } from "./messages";
import { type Shared, sharedOf, workedOut } from "./mixerload";
import { filledRows, numberIn, plain, plainRows } from "./plain";
import { type JobRead, readJob } from "./readjob";
import type { Cell } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The card has columns for so many loads. */
export const MOST_LOADS = 8;

export const readMixer = (spreadsheet: Spreadsheet, job: number): JobRead =>
	readJob(spreadsheet, job, ["Job", "Tones", "Pour card"]);

/** Values of the column of a load in a block of the card. */
const typedIn = (read: JobRead, block: string, load: number): Typed[] =>
	read.cells(`Pour card.${block}`).map((row) => plain(row[load - 1]));

/** The state of a job read just now. */
export function mixerOf(read: JobRead): MixerState {
	const shared = sharedOf(read);
	const setting = (key: string): number =>
		numberIn(read.studio.setting(key)) ?? 0;
	const loads = Object.keys(shared.masses)
		.map(Number)
		.filter((load) => load <= MOST_LOADS)
		.sort((a, b) => a - b);
	return {
		number: read.number,
		title: String(read.cell("Job.title")),
		units: read.studio.units,
		tones: filledRows(read.cells("Tones.dosed")),
		pigments: (read.cells("Tones.pigments")[0] ?? []).map(String),
		ingredients: [
			...read.cells("Tones.mix_table").map(([name]) => String(name ?? "")),
			"Ice, crushed",
		],
		mixDivision: shared.mixDivision,
		gramDivision: setting("gram_division"),
		sticks: setting("sticks"),
		workingMinutes: plain(numberIn(read.cell("Pour card.working_time"))),
		planNumber: plain(numberIn(read.cell("Pour card.plan_number"))),
		chosen: shared.chosen,
		loads: loads.map((load) => loadOf(read, shared, load)),
		problems: problemsIn(read),
	};
}

function loadOf(read: JobRead, shared: Shared, load: number): MixerLoad {
	const mixed = typedIn(read, "mixed", load);
	const fresh = typedIn(read, "fresh", load);
	const reserved = typedIn(read, "reserve_weights", load)[0] ?? "";
	const numbers = read.cells("Job.load_numbers");
	return {
		number: load,
		castings: read
			.cells("Job.load_castings")
			.filter((_, row) => numbers[row]?.[0] === load)
			.map(([name]) => String(name)),
		mix: shared.masses[load] ?? 0,
		...workedOut(shared, load, {
			mixed,
			reserved,
		}),
		mixed,
		reserveWeighed: reserved,
		weights: typedIn(read, "weights", load),
		planNumber: typedIn(read, "plan_numbers", load)[0] ?? "",
		fresh: Object.fromEntries(
			NOTES.map((key, row) => [key, fresh[row] ?? ""]),
		) as unknown as Fresh,
		recorded: recordedLoads(read).has(load),
	};
}

/** The job's loads that the Pour log has. */
export function recordedLoads(read: JobRead): Set<number> {
	const rows = read.studio.pours();
	return new Set(
		rows
			.filter((row) => Number(row[1]) === read.number)
			.map((row) => Number(row[3])),
	);
}

const isLook = (value: Cell): value is string =>
	typeof value === "string" && value.startsWith("Look:");

/** What the card and the tones say is wrong, once each. */
function problemsIn(read: JobRead): string[] {
	const said = [
		read.cell("Tones.tones_check"),
		read.cell("Pour card.plan_check"),
		read.cell("Pour card.water_check"),
	];
	return [
		...new Set(said.filter(isLook).map((text) => text.slice(5).trim())),
		...plainRows(read.cells("Pour card.plan"))
			.slice(0, 1)
			.flatMap(([first]) =>
				typeof first === "string" && first.startsWith("#")
					? [
							"the plan on the Pour card shows an error: point at it to read why",
						]
					: [],
			),
	];
}
