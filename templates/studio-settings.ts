import type { Format } from "../src/template/plan";

type Setting = readonly [
	key: string,
	label: string,
	format: Format,
	help: string,
];

/** Under each heading its settings, a row each. */
export const SETTINGS: readonly (readonly [
	heading: string,
	settings: readonly Setting[],
])[] = [
	[
		"Units and money",
		[
			[
				"units",
				"Units",
				"text",
				"Set when these tabs were made: every number in this workbook is in them",
			],
			["studio_name", "Studio name", "text", "At the head of every quote"],
			["currency", "Currency", "text", "Shown beside money"],
			[
				"labor_rate",
				"Labor, per hour",
				"money",
				"What an hour of work costs the studio",
			],
			[
				"overhead",
				"Overhead",
				"share",
				"Rent, power, insurance and the like: a share of materials and labor",
			],
			[
				"remake",
				"Remake allowance",
				"share",
				"Share of the cost set aside for pieces that must be cast again",
			],
			[
				"margin",
				"Margin wanted",
				"share",
				"What is left of the price after all cost",
			],
			["tax", "Tax", "share", "Added to the price on the quote"],
			[
				"card_fee",
				"Card fee",
				"share",
				"Share of a payment that the card company keeps; in the price",
			],
			[
				"deposit",
				"Deposit",
				"share",
				"Share of the quote that is paid before work begins",
			],
			["quote_days", "A quote holds, days", "whole", "Shown on the quote"],
		],
	],
	[
		"Mixer and scales",
		[
			[
				"mixer_capacity",
				"Mixer capacity, {mass}",
				"mass",
				"Fresh mix in one load, as its maker states it for stiff mixes",
			],
			[
				"least_blend",
				"Least the mixer blends well, {mass}",
				"mass",
				"Less than this turns without blending; the checks say so",
			],
			[
				"mix_division",
				"Mix scale division, {mass}",
				"number",
				"The smallest step of the scale that weighs the mix",
			],
			[
				"gram_division",
				"Gram scale division, g",
				"number",
				"The smallest step of the scale that weighs pigment",
			],
			[
				"sticks",
				"Sticks in each vessel, {mass}",
				"mass",
				"Left on walls and tools; taken off the last tone of each vessel",
			],
			[
				"reserve",
				"Reserve for corrections",
				"share",
				"Undosed mix pulled off first, to lighten a tone that came out too dark",
			],
			[
				"waste",
				"Usual waste",
				"share",
				"Added to every volume; it must cover the reserve and what sticks",
			],
			[
				"air",
				"Air in fresh mix",
				"share",
				"Share of the volume; 2% is usual for fluid mixes without air entrainer",
			],
		],
	],
	[
		"Lifting and strength",
		[
			[
				"one_person",
				"One person may lift, {mass}",
				"mass",
				"This studio's own limit for a piece carried by one person",
			],
			[
				"crew",
				"People there to lift",
				"whole",
				"The checks name a piece that takes more of them, or equipment",
			],
			[
				"equipment",
				"Lifting equipment carries, {mass}",
				"mass",
				"Hoist, gantry or cart, in the shop and at delivery; blank: none",
			],
			[
				"flexural",
				"Flexural strength to count on, {stress}",
				"number",
				"Of your mix at the age it is moved, from a test or its data sheet, with a margin",
			],
		],
	],
	[
		"Pour day",
		[
			[
				"warmest_mix",
				"Mix temperature wanted, {temperature}",
				"temperature",
				"Of the fresh mix as it leaves the mixer",
			],
			[
				"working_minutes",
				"Working time, minutes",
				"whole",
				"From water in to the last tone placed, as a trial in this studio showed",
			],
			[
				"working_temp",
				"Measured at a mix temperature of, {temperature}",
				"temperature",
				"Of the trial: the working time at another temperature follows from it",
			],
			[
				"step_minutes",
				"Minutes per step",
				"number",
				"To pull off or dose and fold once; with it the card tells whether the time is enough",
			],
		],
	],
	[
		"Cure and calendar",
		[
			[
				"demold_hours",
				"Demold after, hours",
				"whole",
				"At about 20 °C (68 °F) under cover; a test on the piece comes first",
			],
			[
				"fill_days",
				"Fill voids, days after the pour",
				"whole",
				"With pigmented paste, once the piece is out of the mold",
			],
			[
				"polish_days",
				"Polish, days after the pour",
				"whole",
				"At least a day after the voids are filled",
			],
			[
				"recoat_hours",
				"Recoat, hours between coats",
				"whole",
				"From the sealer's data sheet",
			],
			[
				"seal_days",
				"Seal not before, days after the pour",
				"whole",
				"And not before the moisture reading that the sealer's data sheet asks for",
			],
			[
				"deliver_days",
				"Deliver, days after sealing",
				"whole",
				"The sealer's own cure, from its data sheet",
			],
			[
				"cement",
				"Cement",
				"text",
				"How fast it hardens, for the strength to expect at an age",
			],
			[
				"weekend",
				"Days off",
				"text",
				"No work is planned on them, nor on the closed days in column E",
			],
			[
				"bench_hours",
				"Bench hours a week",
				"whole",
				"Hours of work that the studio has in a week",
			],
		],
	],
	[
		"Finish",
		[
			[
				"void_share",
				"Voids, share of the surface",
				"share",
				"Of the area to finish, as the studio's own pieces show",
			],
			[
				"void_depth",
				"Mean void depth, {length}",
				"number",
				"As the studio's own pieces show",
			],
			[
				"skim",
				"Skim of paste, {length}",
				"number",
				"Thickness left over the whole surface before it is polished off",
			],
			[
				"sealer_coverage",
				"Sealer covers, {coverage}",
				"number",
				"For one coat, from its data sheet",
			],
			["sealer_coats", "Sealer coats", "whole", "From its data sheet"],
			[
				"sealer_price",
				"Sealer, price per {coating}",
				"money",
				"What the studio pays",
			],
		],
	],
];
