import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { AddOn, Desk, DeskOptions } from "./contract";
import { openDesk } from "./desk";
import { openNodeRealm } from "./realm-node";
import { startHeadlessEngine } from "./univer-node";

/** The built add-on of a folder. @throws Error when it has not been built. */
export function readAddOn(dist: string): AddOn {
	const file = join(dist, "Code.js");
	if (!existsSync(file))
		throw new Error(`${file} is missing: npm run build makes it`);
	const pages = readdirSync(dist).filter((name) => name.endsWith(".html"));
	return {
		name: "Tonefold",
		code: readFileSync(file, "utf8"),
		pages: Object.fromEntries(
			pages.map((name) => [
				name.replace(/\.html$/, ""),
				readFileSync(join(dist, name), "utf8"),
			]),
		),
	};
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
