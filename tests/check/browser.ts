import { existsSync } from "node:fs";
import { findBrowser } from "../../src/desk/browser";
import { succeeds } from "./steps";

const isDebianRoot = (): boolean =>
	process.getuid?.() === 0 &&
	existsSync("/etc/debian_version") &&
	existsSync("/usr/bin/apt-get");

function getOne(): void {
	if (isDebianRoot()) {
		succeeds("apt-get", ["update", "-q"]) &&
			succeeds("apt-get", [
				"install",
				"-y",
				"-q",
				"--no-install-recommends",
				"chromium",
			]);
	} else succeeds("npx", ["playwright-core", "install", "chromium"]);
}

/** The browser's program; where there is none, after trying to install one. */
export function browserOrGetOne(): string | undefined {
	const found = findBrowser();
	if (found) return found;
	console.log("\nNo browser is installed: getting Chromium");
	getOne();
	return findBrowser();
}
