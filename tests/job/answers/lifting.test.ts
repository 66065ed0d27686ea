/** Who lifts a piece: the piece and the job's check say the same of it. */
import { expect, test } from "vitest";
import { answers } from "../../../src/job/answers/json";
import type { SettingKey } from "../../../src/job/fields/settings";
import type { JobFile } from "../../../src/job/jobfile";
import { slab } from "../../sheets/onejob";
import { studio } from "./slabjob";

type Setting = Partial<Record<SettingKey, number | "">>;

function liftedWith(setting: Setting, job: Partial<JobFile> = {}) {
	const { pieces, checks } = answers(
		{ ...studio, settings: { ...studio.settings, ...setting } },
		{ ...(slab as JobFile), ...job },
	);
	const check = checks.find(({ key }) => key === "lifting");
	return { piece: pieces[0], check };
}

/** What the one slab weighs, kg; limits below are parts of it. */
const MASS = liftedWith({}).piece?.freshMass ?? Number.NaN;

/** Three may lift one and a half times what one may (HSE L23): 1.5 × 0.7 = 1.05 of the slab, while two may lift 0.93 of it. */
const FOR_THREE: Setting = { one_person: 0.7 * MASS, crew: 3, equipment: 0 };
const FOR_NOBODY: Setting = { ...FOR_THREE, one_person: 0.6 * MASS };
const HOIST: Setting = { equipment: 1.01 * MASS };

test.each<[string, string, Setting]>([
	["fine", "one person is enough", { ...FOR_THREE, one_person: MASS }],
	["fine", "the whole crew is enough", FOR_THREE],
	[
		"fine",
		"the crew is enough, equipment not said",
		{ ...FOR_THREE, equipment: "" },
	],
	["fine", "equipment is enough", { ...FOR_NOBODY, ...HOIST }],
	["fine", "equipment for one too few", { ...FOR_THREE, crew: 2, ...HOIST }],
	["look", "no crew is enough, no equipment", FOR_NOBODY],
	["look", "one too few, no equipment", { ...FOR_THREE, crew: 2 }],
	[
		"look",
		"equipment for less than it",
		{ ...FOR_NOBODY, equipment: 0.99 * MASS },
	],
	["unknown", "no limit", { ...FOR_THREE, ...HOIST, one_person: "" }],
	["unknown", "no crew", { ...FOR_THREE, ...HOIST, crew: "" }],
	["unknown", "equipment not said", { ...FOR_NOBODY, equipment: "" }],
])("%s: %s", (state, _, setting) => {
	const { piece, check } = liftedWith(setting);
	expect(piece?.carry.state).toBe(state);
	expect(check?.state).toBe(state);
	expect(piece?.carry.say).not.toBe("");
});

test("a piece of which the weight is not known is not known to be lifted", () => {
	const setting = { ...FOR_THREE, ...HOIST };
	const { piece, check } = liftedWith(setting, { mix: "" });
	expect([piece?.carry.state, check?.state]).toEqual(["unknown", "unknown"]);
});

test("this job's own crew goes before the studio's", () => {
	expect(liftedWith(FOR_THREE, { crew: 2 }).piece?.carry.state).toBe("look");
});
