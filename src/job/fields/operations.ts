/** The work of a job: each operation by its key, and invented hours that a new job begins with. */

import { sameName } from "../../calc/names";

/** What an operation is done for each of; a face is 1 m² or 10 ft² to fill, polish and seal. */
export type CountedBy = "casting" | "load" | "face" | "job";

interface Operation {
	label: string;
	forEach: CountedBy;
	hoursEach: number;
}

/** The keys are those of `work` in a job's file. */
export const OPERATIONS = {
	template: {
		label: "Measure and template",
		forEach: "casting",
		hoursEach: 0.75,
	},
	mold: { label: "Build the mold", forEach: "casting", hoursEach: 2 },
	pour: { label: "Weigh, mix and pour", forEach: "load", hoursEach: 2.5 },
	demold: {
		label: "Demold, clean the mold",
		forEach: "casting",
		hoursEach: 0.5,
	},
	polish: { label: "Fill and polish", forEach: "face", hoursEach: 1.5 },
	seal: { label: "Seal", forEach: "face", hoursEach: 0.4 },
	deliver: { label: "Deliver and install", forEach: "job", hoursEach: 4 },
} as const satisfies Record<string, Operation>;

export type OperationKey = keyof typeof OPERATIONS;

export const OPERATION_KEYS = Object.keys(OPERATIONS) as OperationKey[];

/** The key of an operation by its name; a name that is none's stays as it is, so that the answers can say so. */
export const operationKey = (name: unknown): string =>
	OPERATION_KEYS.find((key) =>
		sameName(OPERATIONS[key].label, String(name ?? "")),
	) ?? String(name ?? "").trim();
