/** What panel and script say to each other: plain data only, since `google.script.run` passes nothing else. */
import type { JobFile } from "../job/jobfile";
import type { UnitSystem } from "../job/reading/units";
import type { StudioFile } from "../job/studiofile";

/**
 * The panel's views. A menu entry opens the panel at one of them: the page that is served then ends
 * with `<div id="opening" data-view="checks" data-job="14"></div>`; without it, it is for the panel to choose.
 */
export type View =
	| "newjob"
	| "mixer"
	| "checks"
	| "picture"
	| "record"
	| "functions";

/** What the panel needs to answer as one types. */
export interface PanelStart {
	units: UnitSystem;
	/** False before the first use: `units` may still be chosen then. */
	unitsFixed: boolean;
	/** What a job is worked out from: settings, mixes and pigments as typed. */
	studio: StudioFile;
	/** The same in the other units, while they may still be chosen. */
	inOtherUnits?: StudioFile;
	/** Jobs with live tabs, ascending; closed ones are not among them. */
	jobs: { number: number; title: string }[];
	/** The job whose tab is open; 0 when it is none. */
	open: number;
	/** `,` or `;`: what the file puts between arguments. */
	separator: string;
}

export interface JobMade {
	number: number;
	/** Names of its tabs, in order; the first is opened. */
	tabs: string[];
}

/** One check of a job. */
export interface CheckRow {
	what: string;
	/** `fine`, `waits for …`, or a sentence that begins with `Look:`. */
	result: string;
	/** From 1 to 3, which is the worst. */
	weight: number;
	/** Where to look, for `showCell`: `Tones!M11`, by the tab's own name in every job; `""` where it is nowhere in particular. */
	cell: string;
}

export interface JobChecks {
	number: number;
	title: string;
	/** What is not fine first, the worst of it before the rest. */
	rows: CheckRow[];
}

/** A typed cell: a number, a text, or `""` for a blank one. Days and times of day come as texts: `2026-05-04`, `14:05`. */
export type Typed = string | number;

/** What people note of a load. */
export interface Fresh {
	spread: Typed;
	mixTemperature: Typed;
	airTemperature: Typed;
	/** Time of day the water went in. */
	waterIn: Typed;
	lastTone: Typed;
	weighedBy: Typed;
	lots: Typed;
	remarks: Typed;
	result: Typed;
}

/** One load as it stands on the Pour card. */
export interface MixerLoad {
	/** From 1. */
	number: number;
	castings: string[];
	/** Mix that the load is made of, in the workbook's mass unit, before anything was weighed. */
	mix: number;
	/** What the mix design asks of each ingredient in this load before anything was weighed, unrounded; `""` where there is none. */
	planned: Typed[];
	/** What to weigh of each ingredient after what was weighed of the others, unrounded; a row each, `""` where there is none. */
	weighOut: Typed[];
	/** What the scale said for each ingredient: column of the weigh-out. */
	mixed: Typed[];
	/** Undosed mix to pull off first, rounded to the mix scale. */
	reserve: number;
	/** What the scale said for it. */
	reserveWeighed: Typed;
	/** Arguments of `PULL_OFF_PLAN` for this load: undosed mass and its binder share. `""` while they cannot be worked out. */
	planMass: Typed;
	planBinder: Typed;
	/** What the scale said for each row of the plan. */
	weights: Typed[];
	/** The plan number that was typed when the load began. */
	planNumber: Typed;
	fresh: Fresh;
	/** Whether the Pour log has it. */
	recorded: boolean;
}

/** Everything that weighing needs, read once. The plan itself is `PULL_OFF_PLAN(tones, pigments, planMass, planBinder, weights, units)`. */
export interface MixerState {
	number: number;
	title: string;
	units: UnitSystem;
	/** Name, effective share and doses as weighed (pigment with its water), without blank rows. */
	tones: Typed[][];
	/** Names of the pigments' columns, blank ones too. */
	pigments: string[];
	ingredients: string[];
	/** Steps of the two scales, in the workbook's mass unit and in grams. */
	mixDivision: number;
	gramDivision: number;
	/** What sticks in each vessel, in the workbook's mass unit. */
	sticks: number;
	/** Working time from water in to the last tone placed, in minutes; `""` where nobody says. */
	workingMinutes: Typed;
	/** The number of the plan as the tones are now; `""` while there is none. */
	planNumber: Typed;
	/** The load that is chosen on the Pour card. */
	chosen: number;
	loads: MixerLoad[];
	/** Tones whose limit, weights or numbers cannot be trusted, in one sentence each; nothing when all is well. */
	problems: string[];
}

/** A weight, or a note, as the panel wants it written. */
export interface Weighing {
	job: number;
	load: number;
	/** Which column of the load: its ingredients, its reserve or its plan; or which note. */
	column: "mixed" | "reserve" | "weights" | keyof Fresh;
	/** From 1; the reserve and each note have one. */
	row: number;
	/** `""` takes the weight out again. */
	value: Typed;
	/** What the panel believes that the cell holds now. */
	believed: Typed;
	/** The number of the plan that the panel shows; it is written down where the load begins. */
	planNumber: Typed;
}

export interface Weighed {
	/** False when nothing was written: somebody else typed there, or the plan is another by now. */
	written: boolean;
	/** Why not, in one sentence; `""` when written. */
	why: string;
	/** As it is now. */
	state: MixerState;
}

/** What was recorded, and what was not yet ready for it. */
export interface Recorded {
	/** Loads that the Pour log has now and had not before. */
	loads: number[];
	/** One sentence for each load left out, e.g. one without weights. */
	left: string[];
}

/** A measured sample for the Swatches tab. */
export interface SwatchInput {
	mix: string;
	finish: "cast" | "honed" | "polished";
	sealed: "sealed" | "bare";
	state: "dry" | "damp";
	/** Dry pigment as a share of binder, by pigment name; pigments left out have none. */
	doses: Record<string, number>;
	/** `#rrggbb` or `L*, a*, b*` as measured. */
	color: string;
	ageDays?: number;
	lot?: string;
	/** `yyyy-mm-dd` */
	date?: string;
	remark?: string;
}

/** What the picture is drawn from: cells as people typed them. */
export interface JobView {
	number: number;
	title: string;
	units: UnitSystem;
	/** Rows of the Job tab: name, quantity, shape, A to D, thickness, drop height, run and thickness. */
	pieces: Typed[][];
	/** `face up`, `face down` or `""`, a row a piece. */
	faces: string[];
	/** Corner or side of the notch as typed, a row a piece. */
	notches: string[];
	/** Piece, each, shape, A, B. */
	cutouts: Typed[][];
	/** Expected color as `#rrggbb`; `""` where the studio has no swatches for it. */
	tones: {
		name: string;
		share: number;
		color: string;
		/** Dry pigment as a share of binder, by pigment name. */
		doses: Record<string, number>;
	}[];
	/** Name of the mix. */
	mix: string;
}

/** The script's functions that the panel calls, by name. Each throws one sentence when it cannot do what is asked. */
export interface PanelCalls {
	panelStart(): PanelStart;
	createJob(job: JobFile): JobMade;
	createDemoJob(units: UnitSystem): JobMade;
	/** Keeps what a person has not finished typing in the panel, for this person and file; `""` forgets it. Answers its length. */
	keepDraft(text: string): number;
	/** What was kept last; `""` where there is none. */
	keptDraft(): string;
	/** Puts `=NAME(` … `)` into the current cell when it is blank; answers the cell's address. */
	insertFormula(formula: string): string;
	/** The job's checks, read from its tabs; writes nothing. */
	checkJob(job: number): JobChecks;
	/** Opens the tab and selects the cell that a check names; answers the tab's name. */
	showCell(job: number, cell: string): string;
	/** Everything typed on the Pour card and worked out on Tones; writes nothing. */
	mixerState(job: number): MixerState;
	/** Writes one weight or note, unless its cell holds something else than the panel believes. */
	mixerWeigh(weighing: Weighing): Weighed;
	/** Chooses the load that the Pour card shows. */
	mixerChoose(job: number, load: number): MixerState;
	/** Puts every load that was weighed and is not there yet in the Pour log. */
	recordPour(job: number): Recorded;
	/** Adds a row to Swatches; answers its number on that tab. */
	recordSwatch(swatch: SwatchInput): number;
	jobView(job: number): JobView;
	/** Puts a PNG (`data:image/png;base64,…`) on the Quote in place of an earlier one; answers the tab's name. */
	putPicture(job: number, png: string): string;
	/** A repeat order for the same client: a new job with the inputs of this one but those typed for one pour. */
	copyJob(job: number): JobMade;
	/** Keeps the job's tabs as values, hidden; answers their names. */
	closeJob(job: number): string[];
	/** Takes the job's tabs away without asking: whoever calls it asks first. Answers their names. */
	removeJob(job: number): string[];
}
