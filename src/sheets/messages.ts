/** What panel and script say to each other: plain data only, since `google.script.run` passes nothing else. */
import type { JobInput, UnitSystem } from "../template/job";

export interface Ingredient {
	name: string;
	parts: number;
	specificGravity: number;
	binderShare: number;
	cementShare: number;
	waterShare: number;
}

export interface Mix {
	name: string;
	ingredients: Ingredient[];
}

export interface Pigment {
	name: string;
	/** Largest dose its maker allows, as a share of cement; 0.1 where none is given. */
	maximum: number;
	/** Price of a gram; 0 where the studio has not typed one. */
	pricePerGram: number;
}

/** What the panel needs to answer as one types, in the workbook's units. */
export interface PanelStart {
	units: UnitSystem;
	/** False before the first use: `units` may still be chosen then. */
	unitsFixed: boolean;
	currency: string;
	mixerCapacity: number;
	gramDivision: number;
	waste: number;
	air: number;
	mixes: Mix[];
	pigments: Pigment[];
	jobs: { number: number; title: string }[];
	/** `,` or `;`: what the file puts between arguments. */
	separator: string;
}

export interface JobMade {
	number: number;
	/** Names of its tabs, in order; the first is opened. */
	tabs: string[];
}

/** The script's functions that the panel calls, by name. */
export interface PanelCalls {
	panelStart(): PanelStart;
	createJob(job: JobInput): JobMade;
	createDemoJob(units: UnitSystem): JobMade;
	/** Puts `=NAME(` … `)` into the current cell when it is blank; answers the cell's address. */
	insertFormula(formula: string): string;
}
