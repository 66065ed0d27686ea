/** Reads regions together, and names the tab of the one that cannot be read. */
import { InputError } from "../../calc/errors";
import type { Grid } from "../../job/cells/regions";
import type { RegionRead } from "./regiongrids";

/**
 * What `read` makes of the regions; those that are `always` are given to it whichever other one is tried.
 *
 * @throws InputError that begins with the name of the tab.
 */
export function byRegion<R extends string, T>(
	regions: Readonly<Record<R, RegionRead>>,
	always: readonly NoInfer<R>[],
	read: (grids: Record<R, Grid>) => T,
): T {
	const names = [...new Set([...always, ...(Object.keys(regions) as R[])])];
	const gridsOf = (some: readonly R[]) =>
		Object.fromEntries(
			some.map((region) => [region, regions[region].grid]),
		) as Record<R, Grid>;
	try {
		return read(gridsOf(names));
	} catch (error) {
		if (!(error instanceof InputError)) throw error;
		for (const name of names)
			refuse(() => read(gridsOf([...always, name])), regions[name]);
		throw error;
	}
}

function refuse(read: () => unknown, { range }: RegionRead): void {
	try {
		read();
	} catch (error) {
		if (!(error instanceof InputError)) throw error;
		// what is said of a label or a heading does not say of which tab
		if (!error.message.startsWith("the ")) throw error;
		throw new InputError(
			`On the ${range.getSheet().getName()} tab ${error.message}`,
		);
	}
}
