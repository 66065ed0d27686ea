/** `npm test`: types, lint, build, the tests, and in closing what was checked. `npm run test:all`: the exhaustive runs too. */
import { mkdirSync } from "node:fs";
import { browserOrGetOne } from "./check/browser";
import { closing } from "./check/closing";
import { getLibreOffice } from "./check/libreoffice";
import { run, type Step } from "./check/steps";
import { ranTests } from "./check/tests";

const STEPS = {
	types: ["Types", "tsc", ["-p", "tsconfig.json"]],
	addon: [
		"Types of what Apps Script runs",
		"tsc",
		["-p", "tsconfig.addon.json"],
	],
	lint: ["Lint and format", "biome", ["check", "--error-on-warnings"]],
	build: ["Build", "tsx", ["src/build/main.ts"]],
} satisfies Record<string, Step>;

const words = process.argv.slice(2).filter((word) => word !== "--all");
// read by vitest.config.ts
if (process.argv.includes("--all")) process.env.TONEFOLD_TESTS = "all";

mkdirSync("artifacts", { recursive: true });
const started = Date.now();
const steps = Object.values(STEPS).map((step) => run(step));
const built = steps.at(-1)?.passed === true;
const browser = built ? browserOrGetOne() : undefined;
if (built) getLibreOffice();
const tests = built ? await ranTests(browser, words) : undefined;

const { lines, passed } = closing({
	steps,
	tests,
	browser,
	browserNeeded: process.env.CI === "true",
	seconds: (Date.now() - started) / 1000,
});
console.log(lines.join("\n"));
process.exitCode = passed ? 0 : 1;
