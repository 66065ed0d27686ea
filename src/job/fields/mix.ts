import { CEMENTS } from "../../calc/cure";
import { money, number, type Row, share, text, word } from "./field";

/** An ingredient of a mix of the studio. */
export const INGREDIENT = {
	mix: text("Mix", { required: true }),
	ingredient: text("Ingredient", { required: true }),
	parts: number("Parts", { required: true, help: "By dry mass." }),
	specificGravity: number("Specific gravity", {}, { above: 0 }),
	binderShare: share("Binder share", {
		help: "Binder in this ingredient: a bagged blend may be 55%.",
	}),
	cementShare: share("Cement share", { help: "Cement in this ingredient." }),
	waterShare: share("Water share", { help: "Water in this ingredient." }),
	group: word("Solid or water", ["solid", "water"], {
		help: "For the mix temperature: what weighs in as water, and what as solid. Blank is solid.",
	}),
	moisture: share("Moisture", { help: "Of damp sand, share of dry mass." }),
	absorption: share("Absorption", { help: "Share of dry mass." }),
	pack: number("Pack, {mass}", { unit: "mass" }, { above: 0 }),
	packPrice: money("Pack price"),
	measuredDensity: number(
		"Fresh density measured, {density}",
		{
			unit: "density",
			help: "Of the mix, on any of its rows: what a bucket of known volume weighs net, over that volume. All masses are worked out with it.",
		},
		{ above: 0 },
	),
	cement: word("Cement class", CEMENTS, {
		help: "How fast the mix hardens: beside its cement, from the data sheet. Blank: the studio's usual cement.",
	}),
};

export type IngredientRow = Row<typeof INGREDIENT>;
