/** What the functions say to a person as tables, for the panel's page to carry: shorter by a tenth when packed. */
import { type Columns, columnsOf, rowsOf } from "./columns";
import type { ArgumentHelp, FunctionHelp } from "./help";

interface FunctionRow extends Omit<FunctionHelp, "arguments" | "example"> {
	/** How many of the arguments are its own. */
	count: number;
}

export interface HelpTables {
	functions: Columns<FunctionRow>;
	examples: Columns<FunctionHelp["example"]>;
	arguments: Columns<ArgumentHelp>;
}

export const tablesOf = (all: readonly FunctionHelp[]): HelpTables => ({
	functions: columnsOf(
		all.map(({ arguments: { length }, example: _, ...fn }) => ({
			...fn,
			count: length,
		})),
	),
	examples: columnsOf(all.map(({ example }) => example)),
	arguments: columnsOf(all.flatMap((fn) => fn.arguments)),
});

export function helpFrom(tables: HelpTables): FunctionHelp[] {
	const left = rowsOf(tables.arguments);
	const examples = rowsOf(tables.examples);
	return rowsOf(tables.functions).map(({ count, ...fn }, row) => ({
		...fn,
		arguments: left.splice(0, count),
		example: examples[row] as FunctionHelp["example"],
	}));
}
