/** Cells that are not calculated yet. */

/** What a cell shows before its function has answered. */
const LOADING = "Loading...";
/** What it shows, too, before the functions work in this file. */
const UNKNOWN = "#NAME?";

export const isLoading = (value: unknown): boolean => value === LOADING;

export const isUnready = (value: unknown): boolean =>
	isLoading(value) || value === UNKNOWN;

export const notReady = (tab: string): string =>
	`The ${tab} tab has cells that are not calculated yet: wait a moment, then try again`;
