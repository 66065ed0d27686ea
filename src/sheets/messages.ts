/** What panel and script say to each other: plain data only, since `google.script.run` passes nothing else. */
import type { FunctionHelp } from "../functions/help";
import type { CorrectionPart } from "../job/cells/jobcells";
import type { Typed } from "../job/fields/field";
import type { LoggedRow } from "../job/fields/log";
import type { PourRow } from "../job/fields/pour";
import type { JobFile } from "../job/jobfile";
import type { UnitSystem } from "../job/reading/units";
import type { StudioFile } from "../job/studiofile";

export type { Typed };

/**
 * The panel's views. A menu entry opens the panel at one of them: the page that is served then ends
 * with `<div id="opening" data-view="checks" data-job="14"></div>`; without it, it is for the panel to choose.
 */
export type View =
	| "newjob"
	| "mixer"
	| "checks"
	| "picture"
	| "color"
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

/** A job as it stands in the workbook: whatever is shown of it follows from the two files. */
export interface JobState {
	number: number;
	job: JobFile;
	studio: StudioFile;
	/** Loads of this job that the Pour log has. */
	recorded: number[];
	/** Their rows. */
	logged: LoggedRow[];
}

/** A cell of a load on the Pour card: beside an ingredient, beside a step (0 is the reserve), a part of a correction (from 1), or a note. */
export type CardCell =
	| { weighed: string }
	| { step: number }
	| { correction: number; part: CorrectionPart }
	| { note: keyof PourRow };

/** A weight, or a note, as the panel wants it written. */
export interface Weighing {
	job: number;
	load: number;
	cell: CardCell;
	/** `""` takes it out again. */
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
	state: JobState;
}

/** The doses that a repeat order has: those of the plan, or those that the weighed loads reached. */
export type Copied = "planned" | "reached";

/** What was recorded, and what was not yet ready for it. */
export interface Recorded {
	/** Loads that the Pour log has now and had not before. */
	loads: number[];
	/** Loads whose row changed. */
	again?: number[];
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
	/** `#rrggbb` or `L*, a*, b*` as measured; left out of one that is still to be cast. */
	color?: string;
	ageDays?: number;
	lot?: string;
	/** `yyyy-mm-dd` */
	date?: string;
	remark?: string;
	/** A meter's reading where nothing is said. */
	read?: "meter" | "photo";
	/** Names the casts of one wanted color. */
	recipe?: string;
	/** The color that was wanted of a cast. */
	wanted?: string;
}

/** Doses for one tone, as its Tones tab states them; pigments left out have none. */
export interface ToneRecipe {
	job: number;
	tone: string;
	doses: Record<string, number>;
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
	/** What every function for cells says to a person. */
	functionHelp(): FunctionHelp[];
	/** Puts `=NAME(` … `)` into the current cell when it is blank; answers the cell's address. */
	insertFormula(formula: string): string;
	/** Reads the job's tabs and the studio's; writes nothing. */
	jobState(job: number): JobState;
	/** Opens the tab of a block (`Job.pieces`) and selects it; answers the tab's name. */
	showCell(job: number, cell: string): string;
	/** Writes one weight or note, unless its cell holds something else than the panel believes. */
	weigh(weighing: Weighing): Weighed;
	/** Chooses the load that the Pour card shows. */
	chooseLoad(job: number, load: number): JobState;
	/** Puts every load that is finished in the Pour log, and writes the row of one that changed anew. */
	recordPour(job: number): Recorded;
	/** Adds a row to Swatches; answers its number on that tab. */
	recordSwatch(swatch: SwatchInput): number;
	/** Puts the doses of a recipe beside a tone of the job. */
	putRecipe(recipe: ToneRecipe): JobState;
	/** Puts a PNG (`data:image/png;base64,…`) on the Quote in place of an earlier one; answers the tab's name. */
	putPicture(job: number, png: string): string;
	/** The same for a drawing on the Mold tab. */
	putDrawing(job: number, png: string): string;
	/** A repeat order for the same client: a new job with the inputs of this one but those typed for one pour or agreement. */
	copyJob(job: number, as?: Copied): JobMade;
	/** Keeps the job's tabs as values, hidden; answers their names. Refuses while something is open, unless told to. */
	closeJob(job: number, anyway?: boolean): string[];
	/** Makes a closed job's tabs anew from the file that it keeps. */
	openJobAgain(job: number): JobMade;
	/** Takes the job's tabs away without asking: whoever calls it asks first. Answers their names. */
	removeJob(job: number): string[];
}
