/** Loads weighed wrong in many ways, in both units: what the card says of them is what the books of a load come to. */
import { describe, expect, test } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import {
	type CardAnswer,
	cardAnswers,
} from "../../../src/job/answers/card/cardanswers";
import type {
	CorrectionInput,
	JobFile,
	PourInput,
} from "../../../src/job/jobfile";
import { starterStudio } from "../../../templates/starterstudio";
import { slab } from "../../sheets/onejob";
import { type Books, booksOf, doseOf, onScaleKg } from "./bookkeeping";
import { known } from "./slabjob";

const KG = { metric: 1, us: 0.45359237 } as const;
type Units = keyof typeof KG;

/** Of the invented white mix cement and pozzolan are all binder. */
const BINDER_IN = { "White cement": 1, Pozzolan: 1 };
/** Umber is wetted with half a gram of water a gram; Black is a liquid of 40% pigment. */
const WET = { Umber: 1.5, Black: 2.5 };
const PIGMENTS = [
	{ name: "Umber", water: 0.5 },
	{ name: "Black", form: "liquid", solids: 0.4 },
];

const WANTED = [
	{ name: "Plain", share: 0.45, doses: {} },
	{ name: "Sand", share: 0.25, doses: { Umber: 0.015 } },
	{ name: "Bark", share: 0.15, doses: { Umber: 0.04, Black: 0.005 } },
	{ name: "Slate", share: 0.15, doses: { Black: 0.02 } },
] as const;

/** What the scale says where it is not what was asked for. */
type Slip = (asked: number) => number;

interface Variant {
	what: string;
	/** By ingredient, or by the words of a step. */
	slips?: Readonly<Record<string, Slip>>;
	/** After the last step. */
	after?(load: Replay): void;
	/** Taken out again, as the card offers. */
	takenOut?: string;
	pour?: Omit<PourInput, "load">;
	moisture?: number;
	/** Nothing of it is to be looked at. */
	clean?: true;
}

/** A person at the mixer: reads the card, weighs, types; the books are kept beside it. */
class Replay {
	readonly books: Books = booksOf(BINDER_IN, WET);
	private weighed: Record<string, number> = {};
	private steps: Record<string, number> = {};
	readonly corrections: CorrectionInput[] = [];
	constructor(
		readonly units: Units,
		readonly variant: Variant,
	) {}

	card(): CardAnswer {
		const { moisture, pour } = this.variant;
		const starter = starterStudio(this.units);
		const studio = {
			...starter,
			pigments: PIGMENTS,
			mixes: starter.mixes.map((row) =>
				row.ingredient === "Fine sand" && moisture
					? { ...row, moisture, absorption: 0.01 }
					: row,
			),
		};
		const job = {
			...slab,
			units: this.units,
			pieces: [
				{ ...slab.pieces[0], a: "1000 mm", b: "1000 mm", thickness: "50 mm" },
			],
			tones: WANTED,
			pours: [
				{
					load: 1,
					...pour,
					...(pour?.ice && this.units === "metric"
						? { dryTemperature: 32, waterTemperature: 24 }
						: {}),
					weighed: this.weighed,
					steps: this.steps,
					corrections: this.corrections,
				},
			],
		} as unknown as JobFile;
		const planned = cardAnswers(basisOf(studio, { ...job, pours: [] }))[0];
		const planNumber = planned ? known(planned.plan) : 0;
		const [card] = cardAnswers(
			basisOf(studio, {
				...job,
				pours: job.pours?.map((one) => ({ ...one, planNumber })),
			}),
		);
		if (!card) throw new Error("There is no load");
		return card;
	}

	kg(amount: number): number {
		return amount * KG[this.units];
	}

	run(): this {
		for (const { name } of known(this.card().weighOut)) this.weigh(name);
		this.topUp();
		for (const [name, amount] of Object.entries(this.weighed))
			this.books.put(name, this.kg(amount));
		for (const { number } of known(this.card().steps)) this.step(number);
		this.variant.after?.(this);
		return this;
	}

	private weigh(name: string): void {
		const line = known(this.card().weighOut).find((one) => one.name === name);
		const asked = line?.shown ?? 0;
		this.weighed[name] = this.variant.slips?.[name]?.(asked) ?? asked;
		if (this.variant.takenOut !== name) return;
		const { say } =
			known(this.card().weighOut).find((one) => one.name === name) ?? {};
		expect(say?.say).toContain("too much: take it out and type what is left");
		this.weighed[name] = asked;
	}

	/** Adds what the card asks more of. */
	private topUp(): void {
		for (const { name, shown, say } of known(this.card().weighOut))
			if (/ more$/.test(say.say)) this.weighed[name] = shown;
	}

	private step(number: number): void {
		const step = known(this.card().steps).find((one) => one.number === number);
		if (!step) throw new Error(`There is no step ${number}`);
		const asked = step.shown;
		const said = this.variant.slips?.[step.words]?.(asked) ?? asked;
		if (step.do !== "keep") this.steps[String(number)] = said;
		const { books } = this;
		if (step.do === "add") books.add(step.vessel, step.what, said);
		else if (step.do === "keep") books.keep(step.vessel, step.what);
		else books.move(step.vessel, step.what, this.kg(said));
	}

	foldIn(tone: string, amount: number): void {
		this.corrections.push({ tone, foldedIn: amount });
		this.books.move("reserve", tone, this.kg(amount));
	}

	addTo(tone: string, pigment: string, grams: number): void {
		this.corrections.push({ tone, added: { [pigment]: grams } });
		this.books.add(tone, pigment, grams);
	}

	scoopOut(tone: string, amount: number): void {
		this.corrections.push({ tone, takenOut: amount });
		this.books.move(tone, "waste", this.kg(amount));
	}

	sayOf(tone: string): string {
		const found = known(this.card().tones).find(({ name }) => name === tone);
		return found && "look" in found.said ? found.said.look : "";
	}

	/** Does what the card proposes until it proposes nothing more. */
	asProposed(): void {
		for (let turn = 0; turn < 4; turn++) {
			const tone = known(this.card().tones).find(({ proposal }) => proposal);
			if (!tone?.proposal) return;
			const { do: does, pigment = "", shown } = tone.proposal;
			if (does === "fold in") this.foldIn(tone.name, shown);
			else this.addTo(tone.name, pigment, shown);
		}
	}
}

const times =
	(factor: number): Slip =>
	(asked) =>
		asked * factor;

const FILL = "Fill bucket A from the mixer";
const PLAIN = "Pull off Plain from the mixer";
const SAND = "Pull off Sand from the mixer";
const UMBER = "Add Umber to the mixer";
const BLACK = "Add Black to bucket A";
const RESERVE = "Pull off a reserve, cover it";

/** The words of a step come twice: the first Umber is that of Sand, the second that of Bark. */
const once = (time: 1 | 2, slip: Slip): Slip => {
	let met = 0;
	return (asked) => {
		met += 1;
		return met === time ? slip(asked) : asked;
	};
};

const VARIANTS: readonly (() => Variant)[] = [
	() => ({ what: "all as asked", clean: true }),
	() => ({
		what: "cement 0.9% over",
		slips: { "White cement": times(1.009) },
		clean: true,
	}),
	() => ({
		what: "cement 10% over, the others follow",
		slips: { "White cement": times(1.1) },
		clean: true,
	}),
	() => ({
		what: "cement 10% over, taken out",
		slips: { "White cement": times(1.1) },
		takenOut: "White cement",
		clean: true,
	}),
	() => ({
		what: "sand 6% over, cement and pozzolan topped up",
		slips: { "Fine sand": times(1.06) },
		clean: true,
	}),
	() => ({ what: "water 5% over", slips: { Water: times(1.05) }, clean: true }),
	() => ({
		what: "reducer 15% over",
		slips: { "Water reducer": times(1.15) },
		clean: true,
	}),
	() => ({
		what: "short fiber 20% over",
		slips: { "Fiber, short": times(1.2) },
		clean: true,
	}),
	() => ({
		what: "cement 5% short, topped up",
		slips: { "White cement": times(0.95) },
		clean: true,
	}),
	() => ({
		what: "cement 0.8% short",
		slips: { "White cement": times(0.992) },
		clean: true,
	}),
	() => ({
		what: "two over: cement 3%, water 8%",
		slips: { "White cement": times(1.03), Water: times(1.08) },
		clean: true,
	}),
	() => ({ what: "damp sand", moisture: 0.05, clean: true }),
	() => ({
		what: "ice in the water",
		pour: { dryTemperature: 90, waterTemperature: 75, ice: "yes" },
	}),
	() => ({ what: "a double reserve", slips: { [RESERVE]: times(2) } }),
	() => ({ what: "no reserve", slips: { [RESERVE]: times(0) } }),
	() => ({ what: "Plain 50% over", slips: { [PLAIN]: times(1.5) } }),
	() => ({ what: "Plain 30% short", slips: { [PLAIN]: times(0.7) } }),
	() => ({ what: "the bucket 20% over", slips: { [FILL]: times(1.2) } }),
	() => ({ what: "the bucket 20% short", slips: { [FILL]: times(0.8) } }),
	() => ({ what: "Sand 50% over", slips: { [SAND]: times(1.5) } }),
	() => ({ what: "Umber 10% over", slips: { [UMBER]: times(1.1) } }),
	() => ({ what: "Umber 10% short", slips: { [UMBER]: times(0.9) } }),
	() => ({
		what: "Umber weighed dry instead of wet",
		slips: { [UMBER]: times(1 / 1.5) },
	}),
	() => ({ what: "Black 15% over", slips: { [BLACK]: times(1.15) } }),
	() => ({
		what: "Umber 10% over, folded in as the card says",
		slips: { [UMBER]: times(1.1) },
		after: (load) => load.asProposed(),
	}),
	() => ({
		what: "Umber 10% short, added as the card says",
		slips: { [UMBER]: times(0.9) },
		after: (load) => load.asProposed(),
	}),
	() => ({
		what: "Bark's Umber 12% over and its Black right: fold in, then add Black",
		slips: { [UMBER]: once(2, times(1.12)) },
		after: (load) => load.asProposed(),
	}),
	() => ({
		what: "scooped out",
		after: (load) => load.scoopOut("Sand", 5),
	}),
	() => ({
		what: "folded in, added and scooped out of one",
		slips: { [UMBER]: times(1.08) },
		after(load) {
			load.foldIn("Sand", 1.5);
			load.addTo("Sand", "Umber", 12);
			load.scoopOut("Sand", 2);
		},
	}),
	() => ({
		what: "cement and Umber 10% over, and Plain 20%",
		slips: {
			"White cement": times(1.1),
			[UMBER]: times(1.1),
			[PLAIN]: times(1.2),
		},
	}),
];

describe.each(["metric", "us"] as const)("a load in %s", (units) => {
	test.each(VARIANTS.map((variant) => [variant().what, variant] as const))(
		"%s",
		(_, variant) => {
			const load = new Replay(units, variant()).run();
			const card = load.card();
			const tones = known(card.tones);
			const all = WANTED.reduce(
				(sum, { name }) => sum + load.books.at(name).mixKg,
				0,
			);
			expect(tones).toHaveLength(WANTED.length);
			for (const { name, undosed, onScale, share, reached } of tones) {
				const heap = load.books.at(name);
				expect(load.kg(undosed)).toBeCloseTo(heap.mixKg, 8);
				expect(load.kg(onScale)).toBeCloseTo(onScaleKg(heap), 8);
				expect(share).toBeCloseTo(heap.mixKg / all, 9);
				for (const pigment of ["Umber", "Black"])
					expect(reached[pigment]).toBeCloseTo(doseOf(heap, pigment), 9);
			}
			expect(load.kg(known(card.reserveLeft))).toBeCloseTo(
				load.books.at("reserve").mixKg,
				8,
			);
			if (!variant().clean) return;
			expect(card.check).toEqual({ state: "fine", say: "fine" });
			for (const { say } of known(card.weighOut))
				expect(say.state).toBe("fine");
			for (const { say } of known(card.steps)) expect(say.state).toBe("fine");
		},
	);

	test.each([
		["Sand too strong", UMBER, () => once(1, times(1.1)), "Sand"],
		["Sand too weak", UMBER, () => once(1, times(0.9)), "Sand"],
		["Slate too strong", BLACK, () => times(1.15), "Slate"],
		["Bark in one pigment", UMBER, () => once(2, times(1.12)), "Bark"],
	] as const)(
		"what the card proposes brings it back: %s",
		(what, step, slip, tone) => {
			const load = new Replay(units, {
				what,
				slips: { [step]: slip() },
			}).run();
			expect(load.sayOf(tone)).not.toBe("");
			load.asProposed();
			expect(load.sayOf(tone)).toBe("");
			// Done as proposed, nothing more is asked.
			expect(load.card().check).toEqual({ state: "fine", say: "fine" });
			const wanted = WANTED.find(({ name }) => name === tone)?.doses ?? {};
			for (const [pigment, dose] of Object.entries<number>(wanted))
				expect(
					Math.abs(doseOf(load.books.at(tone), pigment) / dose - 1),
				).toBeLessThanOrEqual(0.011);
		},
	);
});

/** As words say it: to the tenth below ten. */
const percent = (share: number): number =>
	Number((share * 100).toFixed(share < 0.1 ? 1 : 0));

/** As the mix scale shows it. */
const kg = (mass: number) =>
	`${Number((Math.round(mass / 0.02) * 0.02).toFixed(2))} kg`;

describe("words", () => {
	test("a pigment that folding leaves too weak is named, with its grams", () => {
		const load = new Replay("metric", {
			what: "",
			slips: { [UMBER]: once(2, times(1.12)) },
		}).run();
		const heap = load.books.at("Bark");
		const excess = doseOf(heap, "Umber") / 0.04 - 1;
		const fold = heap.mixKg * excess;
		// What Black lacks in the larger tone: 0.5% of its binder, less what is in it.
		const binder = heap.binderKg * (1 + excess);
		const dry = (binder * 0.005 - (heap.dryKg.Black ?? 0)) * 1000;
		const weak = 1 - doseOf(heap, "Black") / (1 + excess) / 0.005;
		expect(load.sayOf("Bark")).toBe(
			`Umber ${percent(excess)}% too strong: fold in ${kg(fold)} of the reserve to bring it back; that leaves Black ${percent(weak)}% too weak: then add ${Number((Math.round(dry * 2.5 * 10) / 10).toFixed(1))} g as weighed (${Number(dry.toFixed(1))} g dry) of Black`,
		);
	});

	test("more than the reserve has: what each way out comes to", () => {
		const load = new Replay("metric", {
			what: "",
			slips: { [UMBER]: times(2) },
		}).run();
		const heap = load.books.at("Sand");
		const reserve = load.books.at("reserve").mixKg;
		const excess = doseOf(heap, "Umber") / 0.015 - 1;
		const still = (heap.mixKg * (1 + excess)) / (heap.mixKg + reserve) - 1;
		const kept = (reserve / excess) * (onScaleKg(heap) / heap.mixKg);
		expect(load.sayOf("Sand")).toBe(
			`${percent(excess)}% too strong: it needs ${kg(heap.mixKg * excess)} of undosed mix; the reserve has ${kg(reserve)}, with which it is still ${percent(still)}% too strong. Scoop out all but ${kg(kept)} first and that is enough, or mix more without pigment`,
		);
		// The second way, done.
		load.scoopOut("Sand", onScaleKg(heap) - kept);
		load.foldIn("Sand", reserve);
		expect(load.sayOf("Sand")).toBe("");
		expect(doseOf(load.books.at("Sand"), "Umber")).toBeCloseTo(0.015, 9);
	});

	test("shares that drift are said: who has more, and who is short", () => {
		const load = new Replay("metric", {
			what: "",
			slips: { [PLAIN]: times(1.5) },
		}).run();
		const heaps = WANTED.map(({ name, share }) => ({
			name,
			share,
			kg: load.books.at(name).mixKg,
		}));
		const all = heaps.reduce((sum, { kg }) => sum + kg, 0);
		const off = heaps
			.map(({ name, share, kg }) => ({ name, excess: kg / all / share - 1 }))
			.filter(({ excess }) => Math.abs(excess) > 0.05)
			.sort((a, b) => b.excess - a.excess)
			.map(
				({ name, excess }) =>
					`${name} ${percent(Math.abs(excess))}% ${excess > 0 ? "over" : "short of"} its share`,
			);
		expect(off.length).toBeGreaterThan(1);
		expect(load.card().sharesSay).toEqual({
			state: "look",
			say: `Look: ${off.join(", ")}`,
		});
	});

	test.each([
		[
			{ tone: "Sand", foldedIn: 50 },
			/^correction 1: 50 kg folded in is more than the 3\.\d+ kg that is left of the reserve$/,
		],
		[
			{ tone: "Sand", takenOut: 500 },
			/^correction 1: 500 kg scooped out is more than the [\d.]+ kg that there is of Sand$/,
		],
		[
			{ tone: "Moss", foldedIn: 1 },
			/^correction 1: there is no tone Moss in this load$/,
		],
		[{ foldedIn: 1 }, /^correction 1: say which tone it is of$/],
		[
			{ tone: "Sand", added: { Ocher: 5 } },
			/^correction 1: this job has no pigment Ocher$/,
		],
		[
			{ tone: "Bark", added: { "": 5 } },
			/^correction 1: say which pigment was added, like Umber 20$/,
		],
		[
			{ tone: "Sand", added: { Umber: -5 } },
			/^correction 1: Umber must be 0 or more, got -5$/,
		],
		[
			{ tone: "Sand", foldedIn: -5 },
			/^correction 1: folded in must be 0 or more, got -5$/,
		],
	] as const)("a correction that cannot be is said: %j", (typed, say) => {
		const load = new Replay("metric", { what: "" }).run();
		load.corrections.push(typed as CorrectionInput);
		const { tones, check } = load.card();
		expect("look" in tones && tones.look).toMatch(say);
		expect(check.state).toBe("look");
		expect(check.say.slice("Look: ".length)).toMatch(say);
	});

	test("a pigment that a tone should not have is said", () => {
		const load = new Replay("metric", { what: "" }).run();
		load.addTo("Slate", "Umber", 5);
		expect(load.sayOf("Slate")).toBe(
			"Umber is in it and should not be: it cannot be taken out",
		);
	});

	test("grams alone are of a tone's only pigment", () => {
		const load = new Replay("metric", { what: "" }).run();
		load.corrections.push({ tone: "Sand", added: { "": 12 } });
		load.books.add("Sand", "Umber", 12);
		expect(
			known(load.card().tones).find(({ name }) => name === "Sand")?.reached
				.Umber,
		).toBeCloseTo(doseOf(load.books.at("Sand"), "Umber"), 9);
	});
});
