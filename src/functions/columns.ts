/** A list of like things turned to one list for each of their properties. */
export type Columns<Row> = {
	readonly [Name in keyof Row]: readonly Row[Name][];
};

/** All values of each property, in order; the first row says which properties there are. */
export const columnsOf = <Row extends object>(
	rows: readonly Row[],
): Columns<Row> =>
	Object.fromEntries(
		Object.keys(rows[0] ?? {}).map((name) => [
			name,
			rows.map((row) => row[name as keyof Row]),
		]),
	) as unknown as Columns<Row>;

/** The list again. */
export function rowsOf<Row>(columns: Columns<Row>): Row[] {
	const entries = Object.entries<readonly unknown[]>(columns);
	return (entries[0]?.[1] ?? []).map(
		(_, row) =>
			Object.fromEntries(
				entries.map(([name, values]) => [name, values[row]]),
			) as Row,
	);
}
