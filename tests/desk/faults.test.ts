import { expect, it } from "vitest";
import { open } from "./open";

/** Writes a tab in nine service calls, and takes it away when it cannot finish; `careless` does not. */
const MAKES = `
function write(added) {
	var ss = SpreadsheetApp.getActive();
	var sheet = ss.insertSheet("New");
	added.push(sheet);
	sheet.getRange("A1").setValue(1).setNote("x");
	ss.setNamedRange("new_name", sheet.getRange("A1"));
	SpreadsheetApp.flush();
}
function careless() { write([]); }
function careful() {
	var added = [];
	try { write(added); } catch (e) {
		var ss = SpreadsheetApp.getActive();
		if (ss.getRangeByName("new_name")) ss.removeNamedRange("new_name");
		added.forEach(function (sheet) { ss.deleteSheet(sheet); });
		throw new Error("not made: " + e.message);
	}
}
function locked(name) {
	var lock = LockService.getDocumentLock();
	if (!lock.tryLock(1000)) return "busy";
	SpreadsheetApp.getActive().insertSheet(name);
	lock.releaseLock();
	return name;
}
function keepsLock() { LockService.getDocumentLock().waitLock(1000); }
`;
// getActive, insertSheet, getRange, setValue, setNote, getRange, setNamedRange, flush
const CALLS = 8;

it("counts every service call, by name", async () => {
	const desk = await open(MAKES);
	await desk.call("careless");
	expect(desk.counts()).toMatchObject({
		services: CALLS,
		byName: {
			"SpreadsheetApp.getActive": 1,
			"Spreadsheet.insertSheet": 1,
			"Sheet.getRange": 2,
			"Range.setValue": 1,
			"Range.setNote": 1,
			"Spreadsheet.setNamedRange": 1,
			"SpreadsheetApp.flush": 1,
		},
	});
});

it.each(Array.from({ length: CALLS }, (_, index) => index + 1))(
	"fails at call %d, once: who takes back leaves no trace, who does not leaves some",
	async (failAt) => {
		const desk = await open(MAKES);
		const before = desk.state();
		await expect(desk.call("careful", [], { failAt })).rejects.toThrow(
			"not made: Service Spreadsheets failed while accessing document.",
		);
		expect(desk.state()).toBe(before);
		await expect(desk.call("careless", [], { failAt })).rejects.toThrow(
			"Service Spreadsheets failed",
		);
		// the first two calls come before anything is written
		expect(desk.state() === before).toBe(failAt <= 2);
	},
);

it("no fault after the last call", async () => {
	const desk = await open(MAKES);
	await desk.call("careful", [], { failAt: CALLS + 1 });
	expect(desk.tabs()).toEqual(["Sheet1", "New"]);
});

it("the state tells whole workbooks apart", async () => {
	const desk = await open(
		`${MAKES}
function bg() { SpreadsheetApp.getActive().getSheets()[0].getRange("A1").setBackground("#ff0000"); }
function width() { SpreadsheetApp.getActive().getSheets()[0].setColumnWidths(1, 1, 50); }
function name() { SpreadsheetApp.getActive().setNamedRange("a", SpreadsheetApp.getActive().getSheets()[0].getRange("A1")); }
function note() { SpreadsheetApp.getActive().getSheets()[0].getRange("A1").setNote("n"); }
function guard() { SpreadsheetApp.getActive().getSheets()[0].protect(); }
function choice() { SpreadsheetApp.getActive().getSheets()[0].getRange("A1").setDataValidation(SpreadsheetApp.newDataValidation().requireCheckbox().build()); }
function property() { PropertiesService.getDocumentProperties().setProperty("a", "b"); }`,
	);
	const states = [desk.state()];
	let kept = desk.save();
	for (const step of "bg width name note guard choice property careless".split(
		" ",
	)) {
		expect(desk.differsFrom(kept), `before ${step}`).toBeUndefined();
		await desk.call(step);
		expect(desk.differsFrom(kept), `after ${step}`).toBeDefined();
		kept = desk.save();
		states.push(desk.state());
	}
	expect(new Set(states).size).toBe(states.length);
	expect(desk.state()).toBe(states[states.length - 1]);
});

it("another person's whole call runs inside this one, in a context of its own, and finds it locked", async () => {
	const desk = await open(MAKES);
	const heard: unknown[] = [];
	// the third call is inside the lock, the first before it
	await desk.call("locked", ["A"], {
		otherAt: 3,
		other: (person) => heard.push(person.call("locked", ["B"])),
	});
	await desk.call("locked", ["C"], {
		otherAt: 1,
		other: (person) => heard.push(person.call("locked", ["D"])),
	});
	expect(heard).toEqual(["busy", "D"]);
	expect(desk.tabs()).toHaveLength(4);
});

it("a call that ends lets its lock go; one that waits for a held lock fails", async () => {
	const desk = await open(MAKES);
	await desk.call("keepsLock");
	expect(await desk.call("locked", ["A"])).toBe("A");
	await desk.call("locked", ["B"], {
		otherAt: 3,
		other: (person) =>
			expect(() => person.call("keepsLock")).toThrow("Lock timeout"),
	});
});

it("calls queue: each finds the numbers that the one before has led to", async () => {
	const desk = await open(`
function set(n) { var s = SpreadsheetApp.getActive().getSheets()[0]; s.getRange("A1").setValue(n); s.getRange("B1").setFormula("=A1*2"); }
function get() { return SpreadsheetApp.getActive().getSheets()[0].getRange("B1").getValue(); }`);
	const answers = await Promise.all([
		desk.call("set", [1]),
		desk.call("get"),
		desk.call("set", [5]),
		desk.call("get"),
	]);
	expect(answers).toEqual([null, 2, null, 10]);
});

it("a kept workbook opens as it was, properties, protections and all", async () => {
	const code = `
function fill() {
	var ss = SpreadsheetApp.getActive(), s = ss.getSheets()[0];
	s.getRange("A1:A2").setValues([[4], ["=TWICE(A1)"]]);
	s.getRange("A1").setNote("n").setBackground("#ff0000");
	s.protect().setWarningOnly(true).setUnprotectedRanges([s.getRange("A1")]);
	ss.setNamedRange("kept", s.getRange("A2"));
	PropertiesService.getDocumentProperties().setProperty("a", "b");
}
function TWICE(x) { return 2 * x; }`;
	const first = await open(code);
	await first.call("fill");
	const saved = JSON.parse(JSON.stringify(first.save()));
	const state = first.state();
	const again = await open(code, { saved });
	expect(again.state()).toBe(state);
	again.type("Sheet1", "A1", "5");
	await again.settle();
	expect(again.read("Sheet1", "A2")).toEqual([[10]]);
	expect(again.named("kept")).toEqual({ tab: "Sheet1", range: "A2" });
});

it("a kept workbook stays as it was, whatever is done in the one opened from it", async () => {
	const code = `function run() { SpreadsheetApp.getActive().getSheets()[0].getRange("A1").setValue(4).setBackground("#ff0000"); }`;
	const first = await open(code);
	first.type("Sheet1", "A1", "3");
	const saved = first.save();
	const text = JSON.stringify(saved);
	const again = await open(code, { saved });
	await again.call("run");
	expect(again.differsFrom(saved)).toBe("Sheet1 0,0 v");
	expect(JSON.stringify(saved)).toBe(text);
});

it("quick calls calculate nothing; the next call does, and everything", async () => {
	const desk = await open(`
function set(n) { var s = SpreadsheetApp.getActive().getSheets()[0]; s.getRange("A1").setValue(n); s.getRange("B1").setFormula("=A1*2"); }
function get() { return SpreadsheetApp.getActive().getSheets()[0].getRange("B1").getValue(); }`);
	await desk.call("set", [1]);
	const kept = desk.save();
	await desk.call("set", [1], { quick: true });
	expect(desk.differsFrom(kept)).toBe("Sheet1 0,1 v");
	expect(desk.differsFrom(kept, { butShown: true })).toBeUndefined();
	await desk.call("set", [5], { quick: true });
	expect(desk.differsFrom(kept, { butShown: true })).toBe("Sheet1 0,0 v");
	expect(await desk.call("get")).toBe(10);
});
