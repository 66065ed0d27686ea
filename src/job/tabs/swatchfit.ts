/** What the Swatches tab answers: beside each row, and of each pigment. */
import { swatchFit } from "../answers/swatchfit";
import { filledPlaces } from "../cells/jobcells";
import { swatchRows } from "../cells/studiocells";
import { besideTyped, type TabAnswer, type TabInput } from "./tab";

const placesOf = ({ regions, units }: TabInput) =>
	filledPlaces(swatchRows(regions.swatches ?? [], units));

export const SWATCHES_NOTED: TabAnswer = {
	name: "SWATCHES_NOTED",
	summary:
		"Of each swatch: what it is not good for, how far it is off the others and off the color wanted, and its place in a recipe.",
	needs: ["swatches"],
	shape: "table",
	shown: [
		{ label: "Not good for", format: "text" },
		{
			label: "Off the others by",
			format: "temperature",
			note: "CIEDE2000 from what the other swatches of its kind say of its dose. A pigment needs an undosed swatch and three doses.",
		},
		{
			label: "Off wanted by",
			format: "temperature",
			by: "COLOR_DIFFERENCE",
			note: "CIEDE2000. Half of people see 0.8 and accept 1.8.",
		},
		{ label: "In its recipe", format: "text" },
	],
	values: (input) =>
		besideTyped(
			placesOf(input),
			swatchFit(input.given.studio).swatches.map(
				({ notGoodFor, offOthers, offWanted, cast }) => [
					notGoodFor,
					offOthers,
					offWanted,
					cast,
				],
			),
		),
};

export const PIGMENTS_KNOWN: TabAnswer = {
	name: "PIGMENTS_KNOWN",
	summary:
		"Of each pigment by mix, finish, sealing and state: how well its swatches agree, which one does not, and what to cast next.",
	needs: ["swatches"],
	shape: "table",
	shown: [
		{ label: "Mix", format: "text" },
		{ label: "Finish", format: "text" },
		{ label: "Sealed", format: "text" },
		{ label: "State", format: "text" },
		{ label: "Pigment", format: "text" },
		{ label: "Swatches", format: "whole" },
		{ label: "Strongest", format: "share" },
		{
			label: "Off each other by",
			format: "temperature",
			note: "Mean CIEDE2000 of its swatches, each against the fit through the others.",
		},
		{ label: "Disagrees", format: "text" },
		{
			label: "Cast next",
			format: "text",
			note: "By a rule that was as good as the best choice on simulated swatches: first a pigment with nothing between undosed and strongest, at 0.3 of the strongest.",
		},
	],
	values(input) {
		const rows = placesOf(input);
		return swatchFit(input.given.studio).pigments.map(
			({ kinds, pigment, count, strongest, mean, odd, next }) => [
				...kinds,
				pigment,
				count,
				strongest,
				mean,
				odd &&
					`Look: swatch ${rows.indexOf(odd.swatch) + 1} of the list, by ${odd.difference.toFixed(1)}`,
				next,
			],
		);
	},
};
