import { chromium } from "playwright-core";
import { programAt } from "./program";

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

/** The program of a Chromium on this computer: the one `CHROMIUM` names, a system's own, or Playwright's. */
export const findBrowser = (): string | undefined =>
	programAt(process.env.CHROMIUM, [...KNOWN_PLACES, chromium.executablePath()]);
