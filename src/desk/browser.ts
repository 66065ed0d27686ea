import { accessSync, constants } from "node:fs";
import { chromium } from "playwright-core";

const KNOWN_PLACES = [
	"/usr/bin/chromium",
	"/usr/bin/chromium-browser",
	"/usr/bin/google-chrome",
	"/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** What a browser needs to run without a screen and to ask nothing of the network. */
export const BROWSER_ARGS = [
	"--headless",
	"--no-sandbox",
	"--disable-gpu",
	"--disable-quic",
	"--no-first-run",
	"--disable-background-networking",
	"--disable-component-update",
	"--disable-sync",
] as const;

function isProgram(path: string): boolean {
	try {
		accessSync(path, constants.X_OK);
		return true;
	} catch {
		return false;
	}
}

/** The program of a Chromium on this computer: the one `CHROMIUM` names, a system's own, or Playwright's. */
export function findBrowser(): string | undefined {
	const named = process.env.CHROMIUM;
	if (named) return isProgram(named) ? named : undefined;
	return [...KNOWN_PLACES, chromium.executablePath()].find(isProgram);
}
