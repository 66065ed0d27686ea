/** The studio's own numbers, under the headings of the Studio tab. */
import { CEMENTS } from "../../calc/cure";
import {
	type Field,
	money,
	number,
	share,
	temperature,
	text,
	whole,
	word,
} from "./field";

const ABOVE_ZERO = { above: 0 };

export const WEEKENDS = ["Saturday and Sunday", "Sunday", "none"] as const;

export const SIDES_STAND = ["on the base", "beside the base"] as const;

/** Light that a card's colors are stated for. */
export const CARD_LIGHTS = ["D50", "D65"] as const;

/** Every number is a start, to be replaced by the studio's own. */
export const SETTING_GROUPS = {
	"Units and money": {
		units: word("Units", ["metric", "us"], {
			start: { metric: "metric", us: "us" },
			help: "Set when these tabs were made: every number in this workbook is in them",
		}),
		studio_name: text("Studio name", {
			help: "At the head of every quote",
		}),
		currency: text("Currency", {
			start: { metric: "€", us: "$" },
			help: "Shown beside money",
		}),
		labor_rate: money("Labor, per hour", {
			start: { metric: 42, us: 45 },
			help: "What an hour of work costs the studio",
		}),
		overhead: share("Overhead", {
			start: 0.18,
			help: "Rent, power, insurance and the like: a share of materials and labor",
		}),
		remake: share("Remake allowance", {
			start: 0.05,
			help: "Share of the cost set aside for pieces that must be cast again",
		}),
		margin: share(
			"Margin wanted",
			{
				start: 0.35,
				help: "What is left of the price after all cost",
			},
			{ below: 1 },
		),
		tax: share("Tax", {
			start: { metric: 0.2, us: 0.0825 },
			help: "Added to the price on the quote",
		}),
		card_fee: share("Card fee", {
			start: 0.02,
			help: "Share of a payment that the card company keeps; in the price",
		}),
		deposit: share("Deposit", {
			start: 0.5,
			help: "Share of the quote that is paid before work begins",
		}),
		quote_days: whole("A quote holds, days", {
			start: 30,
			help: "Shown on the quote",
		}),
	},
	"Mixer and scales": {
		mixer_capacity: number(
			"Mixer capacity, {mass}",
			{
				unit: "mass",
				start: { metric: 150, us: 330 },
				help: "Fresh mix in one load, as its maker states it for stiff mixes",
			},
			ABOVE_ZERO,
		),
		least_blend: number("Least the mixer blends well, {mass}", {
			unit: "mass",
			start: { metric: 15, us: 33 },
			help: "Less than this turns without blending; the checks say so",
		}),
		mix_division: number(
			"Mix scale division, {mass}",
			{
				unit: "mass",
				start: { metric: 0.02, us: 0.05 },
				help: "The smallest step of the scale that weighs the mix",
			},
			ABOVE_ZERO,
		),
		gram_division: number(
			"Gram scale division, g",
			{
				unit: "pigment",
				start: 0.1,
				help: "The smallest step of the scale that weighs pigment",
			},
			ABOVE_ZERO,
		),
		gram_most: number(
			"Gram scale takes at most, g",
			{
				unit: "pigment",
				start: 3000,
				help: "Small ingredients of the mix go on it where the mix scale is too coarse; blank: none do",
			},
			ABOVE_ZERO,
		),
		bucket_volume: number(
			"Bucket for the fresh density holds, {volume}",
			{
				unit: "volume",
				wanted: "what the bucket holds, on the Studio tab",
				help: "By the weight of the water that fills it; with it a weighed bucket of fresh mix tells what a load yields",
			},
			ABOVE_ZERO,
		),
		sticks: number("Sticks in each vessel, {mass}", {
			unit: "mass",
			start: { metric: 0.3, us: 0.6 },
			help: "Left on walls and tools; taken off the last tone of each vessel",
		}),
		reserve: share("Reserve for corrections", {
			start: 0.03,
			help: "Undosed mix pulled off first, to lighten a tone that came out too dark",
		}),
		waste: share("Usual waste", {
			start: 0.08,
			help: "Added to every volume; it must cover the reserve and what sticks",
		}),
		air: share("Air in fresh mix", {
			start: 0.02,
			help: "Share of the volume; 2% is usual for fluid mixes without air entrainer",
		}),
	},
	"Lifting and strength": {
		one_person: number(
			"One person may lift, {mass}",
			{
				unit: "mass",
				wanted: "what one person may lift on the Studio tab",
				help: "This studio's own limit for a piece carried by one person. The 23 kg (51 lb) of NIOSH are for an ideal lift only: see LIFT_LIMIT",
			},
			ABOVE_ZERO,
		),
		lift_reach: number(
			"That holds for a reach of, {length}",
			{
				unit: "length",
				help: "From the ankles to the hands: what one person may lift falls with the reach",
			},
			ABOVE_ZERO,
		),
		lift_height: number("And hands at a height of, {length}", {
			unit: "length",
			help: "Where the lift begins",
		}),
		crew: whole("People there to lift", {
			start: 3,
			wanted: "how many are there to lift on the Studio tab",
			help: "The checks name a piece that takes more of them, or equipment",
		}),
		equipment: number("Lifting equipment carries, {mass}", {
			unit: "mass",
			wanted:
				"what the lifting equipment carries on the Studio tab, 0 for none",
			help: "Hoist, gantry or cart, in the shop and at delivery; 0: none",
		}),
		least_strip: number(
			"Least strip beside a cutout, {length}",
			{
				unit: "length",
				start: { metric: 50, us: 2 },
				wanted: "the least strip beside a cutout on the Studio tab",
				help: "The checks name a cutout nearer to an edge. For thin cast concrete none is published; stone shops keep 90 mm (3-1/2 in) before and behind a sink",
			},
			ABOVE_ZERO,
		),
		flexural: number(
			"Flexural strength at 28 days, {stress}",
			{
				unit: "stress",
				start: { metric: 5, us: 700 },
				formerly: ["Flexural strength to count on, {stress}"],
				wanted: "the flexural strength of the mix on the Studio tab",
				help: "Of your mix, from a test or its data sheet, with a margin; younger it is less, by the class of its cement",
			},
			ABOVE_ZERO,
		),
		handling_factor: number(
			"Factor for handling",
			{
				start: 1.5,
				wanted: "the factor for handling on the Studio tab",
				help: "On the stress, for impact and for suction as a piece leaves the mold. PCI (from memory): 1.2 for a smooth oiled mold, 1.5 traveling",
			},
			{ min: 1 },
		),
	},
	"Pour day": {
		warmest_mix: temperature("Mix temperature wanted, {temperature}", {
			start: { metric: 20, us: 68 },
			help: "Of the fresh mix as it leaves the mixer",
		}),
		working_minutes: whole(
			"Working time, minutes",
			{
				start: 45,
				help: "From water in to the last tone placed, as a trial in this studio showed",
			},
			ABOVE_ZERO,
		),
		working_temp: temperature(
			"Measured at a mix temperature of, {temperature}",
			{
				start: { metric: 20, us: 68 },
				help: "Of the trial: the working time at another temperature follows from it",
			},
		),
		mixing_minutes: number("Minutes to mix a load", {
			start: 6,
			help: "From water in until the first mix is pulled off",
		}),
		placing_minutes: number("Minutes to place a load", {
			start: 10,
			help: "From the last dose until the last tone is placed",
		}),
		step_minutes: number("Minutes per step", {
			start: 1.5,
			help: "To pull off or dose and fold once; with it the card tells whether the time is enough",
		}),
	},
	"Cure and calendar": {
		demold_hours: whole("Demold after, hours", {
			start: 20,
			help: "At about 20 °C (68 °F) under cover; a test on the piece comes first",
		}),
		longest_mold_hours: whole("Longest in the mold, hours", {
			start: 72,
			wanted: "the longest time in the mold on the Studio tab",
			help: "Of a piece with knockouts, cores, a notch or a drop edge, which it shrinks onto. Common practice, no source",
		}),
		fill_days: whole("Fill voids, days after the pour", {
			start: 3,
			help: "With pigmented paste, once the piece is out of the mold",
		}),
		polish_days: whole("Polish, days after the pour", {
			start: 4,
			help: "At least a day after the voids are filled",
		}),
		recoat_hours: whole("Recoat, hours between coats", {
			start: 4,
			help: "From the sealer's data sheet",
		}),
		seal_days: whole("Seal not before, days after the pour", {
			start: 10,
			help: "And not before the moisture reading that the sealer's data sheet asks for",
		}),
		deliver_days: whole("Deliver, days after sealing", {
			start: 4,
			help: "The sealer's own cure, from its data sheet",
		}),
		cement: word("Cement", CEMENTS, {
			start: "normal",
			help: "How fast it hardens, for the strength to expect at an age",
		}),
		weekend: word("Days off", WEEKENDS, {
			start: "Saturday and Sunday",
			help: "No work is planned on them, nor on the closed days in column E",
		}),
		bench_hours: whole("Bench hours a week", {
			start: 60,
			help: "Hours of work that the studio has in a week",
		}),
	},
	"Molds and boards": {
		board_length: number(
			"Board length, {length}",
			{
				unit: "length",
				start: { metric: 2800, us: 96 },
				help: "Of the boards that molds are cut from, called Mold sheet on Stock and Cost",
			},
			ABOVE_ZERO,
		),
		board_width: number(
			"Board width, {length}",
			{
				unit: "length",
				start: { metric: 2070, us: 48 },
				help: "Across the board",
			},
			ABOVE_ZERO,
		),
		board_thickness: number(
			"Board thickness, {length}",
			{
				unit: "length",
				start: { metric: 18, us: 0.75 },
				help: "Measured: boards sold under one name differ by 1 mm (1/16 in) and more",
			},
			ABOVE_ZERO,
		),
		kerf: number("Saw cut, {length}", {
			unit: "length",
			start: { metric: 3.2, us: 0.125 },
			help: "What the blade takes away",
		}),
		board_trim: number("Trim off each edge, {length}", {
			unit: "length",
			start: { metric: 5, us: 0.25 },
			help: "Taken off a new board first, its cut included",
		}),
		sides_stand: word("Sides stand", SIDES_STAND, {
			start: "on the base",
			help: "Beside the base its sawn edges set the size of the piece, and sides are higher by its thickness",
		}),
		board_modulus: number(
			"Elasticity of the board, {stress}",
			{
				unit: "stress",
				start: { metric: 1600, us: 232000 },
				help: "Modulus from its data sheet; 1600 MPa is a requirement of particle board type P2",
			},
			ABOVE_ZERO,
		),
		side_span: number(
			"Sides are held every, {length}",
			{
				unit: "length",
				start: { metric: 400, us: 16 },
				help: "Between two braces or clamps at the foot of a side",
			},
			ABOVE_ZERO,
		),
		strip_thickness: number(
			"Bent strip, thickness, {length}",
			{
				unit: "length",
				start: { metric: 6, us: 0.25 },
				help: "Of what is bent around curves, called Strips on Stock and Cost",
			},
			ABOVE_ZERO,
		),
		strip_length: number(
			"Bent strip, length, {length}",
			{
				unit: "length",
				start: { metric: 2440, us: 96 },
				help: "As it is bought; longer ones are joined",
			},
			ABOVE_ZERO,
		),
		bead_radius: number(
			"Sealant bead, radius, {length}",
			{
				unit: "length",
				start: { metric: 6, us: 0.25 },
				help: "It rounds the edges of the piece",
			},
			ABOVE_ZERO,
		),
		tube_volume: number(
			"Sealant tube, {bead}",
			{
				unit: "bead",
				start: { metric: 300, us: 18.2 },
				help: "As printed on it; 10.1 US fl oz is 18.2 in³",
			},
			ABOVE_ZERO,
		),
		sealant_waste: share("Sealant wasted", {
			start: 0.1,
			help: "Wiped off and left in the tube; 5 to 15% is usual",
		}),
		release_coverage: number(
			"Release covers, {coverage}",
			{
				unit: "coverage",
				start: { metric: 30, us: 1200 },
				help: "From its data sheet; the start is from memory, for sealed faces",
			},
			ABOVE_ZERO,
		),
		release_can: number(
			"Release can, {coating}",
			{
				unit: "coating",
				start: { metric: 5, us: 1 },
				help: "As it is bought",
			},
			ABOVE_ZERO,
		),
		screw_spacing: number(
			"Screws every, {length}",
			{
				unit: "length",
				start: { metric: 200, us: 8 },
				help: "Along the foot of each side; common practice, no source",
			},
			ABOVE_ZERO,
		),
	},
	Finish: {
		void_share: share("Voids, share of the surface", {
			start: 0.06,
			help: "Of the area to finish, as the studio's own pieces show",
		}),
		void_depth: number("Mean void depth, {length}", {
			unit: "length",
			start: { metric: 1.5, us: 0.06 },
			help: "As the studio's own pieces show",
		}),
		skim: number("Skim of paste, {length}", {
			unit: "length",
			start: { metric: 0.2, us: 0.008 },
			help: "Thickness left over the whole surface before it is polished off",
		}),
		sealer_coverage: number(
			"Sealer covers, {coverage}",
			{
				unit: "coverage",
				start: { metric: 12, us: 490 },
				help: "For one coat, from its data sheet",
			},
			ABOVE_ZERO,
		),
		sealer_coats: whole(
			"Sealer coats",
			{
				start: 2,
				help: "From its data sheet",
			},
			{ min: 1 },
		),
		sealer_price: money("Sealer, price per {coating}", {
			start: { metric: 48, us: 190 },
			help: "What the studio pays",
		}),
	},
	"Reference card": {
		card_patches: text("Its patches, row by row", {
			help: "Of each L*, a*, b* or #rrggbb, with | between, e.g. 38, 14, 15 | #c29682 | …",
		}),
		card_columns: whole(
			"Patches in a row",
			{ help: "As the card lies in front of one" },
			{ min: 1 },
		),
		card_light: word("Its L*, a*, b* are for", CARD_LIGHTS, {
			help: "As its maker says: D50 more often than D65",
		}),
	},
} as const satisfies Record<string, Record<string, Field>>;

type Groups = typeof SETTING_GROUPS;
type OfGroups<G> = G extends unknown ? { [K in keyof G]: G[K] } : never;
type Together<U> = (U extends unknown ? (one: U) => void : never) extends (
	all: infer I,
) => void
	? I
	: never;

/** Every setting by its key. */
export const SETTINGS = Object.assign(
	{},
	...Object.values(SETTING_GROUPS),
) as Together<OfGroups<Groups[keyof Groups]>>;

export type SettingKey = keyof typeof SETTINGS;
