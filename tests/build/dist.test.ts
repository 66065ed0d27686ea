import { execFileSync } from "node:child_process";
import {
	cpSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PRODUCT } from "../../src/build/bundle";
import { complaints } from "../../src/build/gates";
import { callFunction, registry } from "../../src/functions/index";
import { tabAnswers } from "../../src/job/tabs/index";
import { bareCaller } from "./bare";

const FILES = [
	"Code.js",
	"Panel.html",
	"Templates.js",
	"appsscript.json",
] as const;
const ROOT = PRODUCT.root;
const read = (file: string): string => readFileSync(join(ROOT, file), "utf8");

let copy: string;

beforeAll(() => {
	copy = mkdtempSync(join(tmpdir(), "tonefold-"));
	cpSync(join(ROOT, "dist"), join(copy, "dist"), { recursive: true });
});
afterAll(() => rmSync(copy, { recursive: true }));

describe("dist", () => {
	test("holds its files and nothing else", () => {
		expect(readdirSync(join(ROOT, "dist")).sort()).toEqual(FILES);
	});

	test("passes the gates as it lies there", () => {
		const dist = {
			"Code.js": read("dist/Code.js"),
			"Templates.js": read("dist/Templates.js"),
			"Panel.html": read("dist/Panel.html"),
			"appsscript.json": read("dist/appsscript.json"),
		};
		expect(
			complaints(
				dist,
				[...registry, ...tabAnswers].map(({ name }) => name),
			),
		).toEqual([]);
	});

	test("has the manifest of the repository", () => {
		expect(read("dist/appsscript.json")).toBe(read("appsscript.json"));
	});

	test("keeps no place of the machine it was built on", () => {
		for (const file of FILES) expect(read(`dist/${file}`)).not.toContain(ROOT);
	});

	test.each(registry.map((fn) => [fn.name, fn] as const))(
		"%s answers its example as its source does, in a context that has nothing but the language",
		(name, fn) => {
			const { values } = fn.example;
			const answer = bareCaller(read("dist/Code.js"))(name, values);
			expect(answer).toEqual(callFunction(fn, values));
		},
	);
});

test("a thousand colors in one call take less than a second of work, in a context that looks at each global", () => {
	const call = bareCaller(read("dist/Code.js"));
	const doses = [[0], [0.01], [0.02], [0.04], [0.06]];
	const colors = [
		["80, 1, 8"],
		["66, 3, 14"],
		["58, 4, 17"],
		["48, 5, 19"],
		["42, 5, 20"],
	];
	const wanted = Array.from({ length: 1000 }, (_, i) => [
		`${45 + (30 * i) / 1000}, 4, 15`,
	]);
	// the quickest of three: other tests run beside this one
	const seconds = [1, 2, 3].map(() => {
		const started = process.cpuUsage();
		expect(call("DOSE_FOR_COLOR", [doses, colors, wanted])).toHaveLength(1000);
		return process.cpuUsage(started).user / 1e6;
	});
	expect(Math.min(...seconds)).toBeLessThan(1);
}, 60_000);

describe("clasp", () => {
	/** What would go to Google from the copy, a stranger beside `dist/`. */
	function pushed(): string[] {
		const example = JSON.parse(read(".clasp.json.example"));
		writeFileSync(
			join(copy, ".clasp.json"),
			JSON.stringify({ ...example, scriptId: "x".repeat(57) }),
		);
		writeFileSync(join(copy, "stray.js"), "");
		const clasp = join(ROOT, "node_modules/@google/clasp/build/src/index.js");
		const status = execFileSync(
			process.execPath,
			[clasp, "show-file-status", "--json"],
			{ cwd: copy, encoding: "utf8" },
		);
		return [...JSON.parse(status).filesToPush].sort();
	}
	const ours = FILES.map((file) => `dist/${file}`);

	test("would push exactly these files", () => {
		expect(pushed()).toEqual(ours);
	});

	test("would push another in dist/ too, so that it must not lie there", () => {
		const other = join(copy, "dist/other.js");
		writeFileSync(other, "");
		expect(pushed()).toEqual([...ours, "dist/other.js"].sort());
		rmSync(other);
	});
});
