import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { addOnOf } from "./addon-files";
import type { AddOn, Desk, DeskOptions } from "./contract";
import { openDesk } from "./desk";
import { openNodeRealm } from "./realm-node";
import { startHeadlessEngine } from "./univer-node";

/** The built add-on of a folder. @throws Error when it has not been built. */
export function readAddOn(dist: string): AddOn {
	const file = join(dist, "Code.js");
	if (!existsSync(file))
		throw new Error(`${file} is missing: npm run build makes it`);
	const names = readdirSync(dist).filter((name) => /\.(js|html)$/.test(name));
	return addOnOf(
		Object.fromEntries(
			names.map((name) => [name, readFileSync(join(dist, name), "utf8")]),
		),
	);
}

export type HeadlessOptions = Partial<
	Omit<DeskOptions, "startEngine" | "openRealm">
>;

/** A desk without a grid, over the built add-on of a folder or one given as text. */
export function openHeadlessDesk(
	dist: string,
	options: HeadlessOptions = {},
): Promise<Desk> {
	return openDesk({
		...options,
		addOn: options.addOn ?? readAddOn(dist),
		startEngine: startHeadlessEngine,
		openRealm: openNodeRealm,
	});
}
