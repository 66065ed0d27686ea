/**
 * What a call has begun to change, kept with the file until it is done.
 *
 * A run that Google ends after six minutes runs no `catch`: the next call reads here what it left.
 */

/** Tabs that are being written; nothing leads to them before the job's row does, which is written last. */
export interface Making {
	act: "making";
	job: number;
	tabs: string[];
	names: string[];
	/** The first of the job's tabs. */
	first: string;
	/** Tab and cell of the job's row. */
	row: [tab: string, cell: string];
	/** The job's closed tabs by id, and the names that they gave up for the new ones. */
	aside?: [id: number, name: string][];
}

/** A job that is being closed or removed; there is only forward. */
export interface Ending {
	act: "closing" | "removing";
	job: number;
	/** Ids of its tabs. */
	tabs: number[];
	names: string[];
	/** The job is made anew beside them: its newest row stays. */
	isAnew?: true;
	/** Rows of the first tab before the job's file is kept below them. */
	rows?: number;
}

/** Rows that are being written; they are there or not, but their formats may be missing. */
export interface Recording {
	act: "recording";
	job: number;
	cells: string;
	formats: string[][];
}

export type Unfinished = Making | Ending | Recording;

const PREFIX = "unfinished ";

const keyOf = ({ act, job }: Pick<Unfinished, "act" | "job">): string =>
	`${PREFIX}${act} ${job}`;

/** Google keeps none for a script that is neither published nor bound to the file: there a killed run leaves what it leaves. */
function kept(): GoogleAppsScript.Properties.Properties | null {
	properties ??= { are: PropertiesService.getDocumentProperties() };
	return properties.are;
}

let properties:
	| { are: GoogleAppsScript.Properties.Properties | null }
	| undefined;

/** Notes it before the first change. */
export function noteBegun(entry: Unfinished): void {
	kept()?.setProperty(keyOf(entry), JSON.stringify(entry));
}

/** Forgets it after the last. */
export function noteDone(entry: Pick<Unfinished, "act" | "job">): void {
	kept()?.deleteProperty(keyOf(entry));
}

/** Everything that was begun and not done. */
export function unfinished(): Unfinished[] {
	const all = kept()?.getProperties() ?? {};
	return Object.keys(all)
		.filter((key) => key.startsWith(PREFIX))
		.map((key) => JSON.parse(all[key] ?? "null") as Unfinished);
}
