/** Numbers copied from one source, and how far an answer may be from them. */

export type Status =
	| "confirmed"
	| "memory"
	| "common practice"
	| "computed apart";

/** Absolute, or a share of the expected number: half the last printed digit, or the note says why not. */
export type Tolerance = number | { rel: number };

export interface PublishedCase {
	function: string;
	/** As a cell passes them: a range is rows of cells, a blank is `""`. */
	args: readonly unknown[];
	/** A scalar, or rows of cells; `null` is a cell that the source does not print. */
	expected: unknown;
	tolerance: Tolerance;
	/** Where in the source, when it is not the file's own locator. */
	locator?: string;
	/** When it is not the file's own status. */
	status?: Status;
	note?: string;
}

export interface PublishedFile {
	source: string;
	locator: string;
	/** Whether the numbers were seen in print, are remembered, or are what the trade does. */
	status: Status;
	cases: readonly PublishedCase[];
}
