import { checksTable, functionTable, withPart } from "../../src/build/table";
import { registry } from "../../src/functions/index";
import { checks, publishedRows } from "../published/checks";

/** A document with its generated tables as they should be now. */
export async function readmeWithTables(document: string): Promise<string> {
	const rows = await publishedRows();
	const names = registry.map(({ name }) => name);
	const withFunctions = withPart(
		document,
		"functions",
		functionTable(registry),
	);
	return withPart(withFunctions, "checks", checksTable(checks(rows, names)));
}
