import { findBrowser } from "../../src/desk/browser";
import { install, isDebianRoot } from "./install";
import { succeeds } from "./steps";

/** The browser's program; where there is none, after trying to install one. */
export function browserOrGetOne(): string | undefined {
	const found = findBrowser();
	if (found) return found;
	console.log("\nNo browser is installed: getting Chromium");
	if (isDebianRoot()) install("chromium");
	else succeeds("npx", ["playwright-core", "install", "chromium"]);
	return findBrowser();
}
