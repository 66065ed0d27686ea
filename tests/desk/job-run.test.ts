import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { runJob } from "../../src/desk/job-run";

const folder = mkdtempSync(join(tmpdir(), "job-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A small add-on with a card of two loads, whose second says so; a job of `bad: true` is refused, of `wet` fails in a cell. */
const CODE = `
function createJob(job) {
	if (job.bad) throw new Error("bad is not understood");
	var ss = SpreadsheetApp.getActive();
	var card = ss.insertSheet("1 Pour card", 1);
	card.deleteRows(11, 990);
	card.deleteColumns(7, 20);
	card.getRange("A1:C1").setValues([[job.title, "", "Weigh, kg"]]);
	card.getRange("A2:C4").setValues([["Load", "", 1], ["", "", ""], ["Sand, fine", "", "=WEIGHT(C2)"]]);
	card.getRange("A5:C5").setValues([["a \\"quoted\\" text", "", job.wet ? "=WEIGHT(-1)" : new Date(2027, 2, 9)]]);
	card.getRange("C4").setNumberFormat("0.00");
	card.getRange("E4").setValue("hidden");
	card.hideColumns(5, 1);
	ss.setNamedRange("job1_load", card.getRange("C2"));
	card.getRange("C2").setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(["1", "2"]).setAllowInvalid(false).build());
	card.getRange("F1").setValue(job.loads === undefined ? 2 : job.loads);
	ss.setNamedRange("job1_loads", card.getRange("F1"));
	return { number: 1, tabs: ["1 Pour card"] };
}
function WEIGHT(load) { if (load < 1) throw new Error("load must be above 0"); return load * 12.5; }
`;
writeFileSync(join(folder, "Code.js"), CODE);
writeFileSync(join(folder, "good.json"), '{ "title": "Bar" }');
writeFileSync(join(folder, "bad.json"), '{ "bad": true }');
writeFileSync(join(folder, "wet.json"), '{ "title": "Bar", "wet": true }');
writeFileSync(join(folder, "three.json"), '{ "title": "Bar", "loads": 3 }');
writeFileSync(join(folder, "none-yet.json"), '{ "title": "Bar", "loads": 0 }');
writeFileSync(
	join(folder, "lost.json"),
	'{ "title": "Bar", "loads": "=WEIGHT(-1)" }',
);
writeFileSync(join(folder, "torn.json"), '{ "title": ');

async function run(...args: string[]) {
	const out: string[] = [];
	const err: string[] = [];
	const code = await runJob({
		args,
		folder,
		dist: folder,
		out: (text) => out.push(text),
		err: (text) => err.push(text),
	});
	return { code, out: out.join("\n"), err: err.join("\n") };
}

it("prints the card of each load, as it is seen", async () => {
	const { code, out, err } = await run("good.json");
	expect([code, err]).toEqual([0, ""]);
	const cards = out.split("=====").filter((part) => part.includes("Sand"));
	expect(cards).toHaveLength(2);
	// 1 × 12.5 and 2 × 12.5
	expect(cards[0]).toMatch(/Sand, fine +12\.50/);
	expect(cards[1]).toMatch(/Sand, fine +25\.00/);
	expect(out).toContain("Job 1, load 2 of 2");
	expect(out).not.toContain("hidden");
});

it.each([
	[
		"three.json",
		"THE CARD IS NOT WHOLE: the job has 3 loads and 1 Pour card has room for 2",
	],
	["none-yet.json", "job 1 has no loads to print: 1 Pour card!F1 says nothing"],
])(
	"a card that cannot show all loads is no good card: %s",
	async (file, message) => {
		const { code, err } = await run(file);
		expect(code).toBe(1);
		expect(err).toContain(message);
	},
);

it("writes every tab as CSV", async () => {
	const { code } = await run("good.json", "--csv", "tables");
	expect(code).toBe(0);
	expect(readFileSync(join(folder, "tables", "Sheet1.csv"), "utf8")).toBe("");
	expect(readFileSync(join(folder, "tables", "1 Pour card.csv"), "utf8")).toBe(
		[
			'Bar,,"Weigh, kg",,,2',
			"Load,,1,,,",
			",,,,,",
			'"Sand, fine",,12.5,,hidden,',
			'"a ""quoted"" text",,2027-03-09,,,',
			"",
		].join("\r\n"),
	);
});

it("says loudly which cell failed and why", async () => {
	const { code, err } = await run("wet.json");
	expect(code).toBe(1);
	expect(err).toContain("ERRORS IN THE WORKBOOK: 1");
	expect(err).toContain("1 Pour card!C5: #ERROR! load must be above 0");
	// also when there is no card to print for it
	const lost = await run("lost.json");
	expect(lost.code).toBe(1);
	expect(lost.err).toContain(
		"job 1 has no loads to print: 1 Pour card!F1 says #ERROR!",
	);
	expect(lost.err).toContain("1 Pour card!F1: #ERROR! load must be above 0");
});

it.each([
	[["bad.json"], "bad is not understood"],
	[["torn.json"], "torn.json is not JSON"],
	[["none.json"], "none.json cannot be read"],
	[[], "name the job's file: npm run job -- FILE.json [--csv DIR]"],
	[["good.json", "--csv"], "--csv needs a folder"],
	[["good.json", "more"], "more is not understood"],
	[["--help"], "--help is not understood"],
])("%j is refused in one line", async (args, message) => {
	const { code, out, err } = await run(...args);
	expect(code).toBe(1);
	expect(out).toBe("");
	expect(err).toContain(message);
	expect(err.split("\n")).toHaveLength(1);
});

it("says how to build what is missing", async () => {
	const err: string[] = [];
	const code = await runJob({
		args: ["good.json"],
		folder,
		dist: join(folder, "nothing"),
		out: () => undefined,
		err: (text) => err.push(text),
	});
	expect(code).toBe(1);
	expect(err.join()).toMatch(/Code\.js is missing: npm run build makes it/);
});
