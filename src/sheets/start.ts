/** The studio and its jobs as the panel wants them. */
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../job/reading/units";
import type { Ingredient, Mix, PanelStart, Pigment } from "./messages";
import { allNames, jobNumbers, jobPrefix } from "./names";
import { openJob } from "./openjob";
import { readStudio } from "./readstudio";
import { type Cell, type Studio, starterStudio } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The most pigment ASTM C979 allows, as a share of cement, where a maker states nothing. */
const MOST_PIGMENT = 0.1;

/** Column of an ingredient's pack on the Mixes tab; its price is beside it. */
const PACK = 10;

/** Everything the panel needs to answer as one types. */
export function startOf(spreadsheet: Spreadsheet): PanelStart {
	const locale = spreadsheet.getSpreadsheetLocale();
	const studio = readStudio(spreadsheet) ?? starterStudio(usualUnits(locale));
	return {
		units: studio.units,
		unitsFixed: studio.exists,
		currency: studio.currency,
		...numbersOf(studio),
		mixes: mixesOf(studio),
		pigments: studio.pigments.map(pigmentOf),
		jobs: jobNumbers(allNames(spreadsheet)).map((number) => ({
			number,
			title: titleOf(spreadsheet, number),
		})),
		open: openJob(spreadsheet),
		separator: separatorOf(locale),
	};
}

const usualUnits = (locale: string): UnitSystem =>
	locale === "en_US" ? "us" : "metric";

/** `;` where the file writes decimals with a comma. */
function separatorOf(locale: string): string {
	const shown = new Intl.NumberFormat(locale.replace("_", "-")).format(1.5);
	return shown.includes(",") ? ";" : ",";
}

function titleOf(spreadsheet: Spreadsheet, job: number): string {
	const range = spreadsheet.getRangeByName(`${jobPrefix(job)}title`);
	return range ? String(range.getValue()) : "";
}

type NumberOf = (
	cell: Cell | undefined,
	what: string,
	blank?: number,
) => number;

/** Reads the numbers of a tab. @throws InputError for anything else: a wrong answer in the panel is worse than none. */
const numbersOn =
	(tab: string): NumberOf =>
	(cell, what, blank) => {
		if (typeof cell === "number") return cell;
		const isBlank = cell === "" || cell === undefined;
		if (blank !== undefined && isBlank) return blank;
		throw new InputError(
			`${what} must be a number, got ${isBlank ? "a blank cell" : `"${cell}"`}: correct it on the ${tab} tab`,
		);
	};

function numbersOf({ mixerCapacity, gramDivision, waste, air }: Studio) {
	const numberOf = numbersOn("Studio");
	return {
		mixerCapacity: numberOf(mixerCapacity, "Mixer capacity"),
		gramDivision: numberOf(gramDivision, "Gram scale division"),
		waste: numberOf(waste, "Usual waste"),
		air: numberOf(air, "Air in fresh mix"),
	};
}

/** Mixes in the order of their first row. */
function mixesOf({ mixes }: Studio): Mix[] {
	const names = [...new Set(mixes.map(([name]) => String(name)))];
	return names.map((name) => ({
		name,
		ingredients: mixes
			.filter((row) => String(row[0]) === name)
			.map(ingredientOf),
	}));
}

function ingredientOf(row: readonly Cell[]): Ingredient {
	const numberOf = numbersOn("Mixes");
	const [mix, name, parts, gravity, binder, cement, water] = row;
	const of = `${mix}, ${name}:`;
	return {
		name: String(name),
		parts: numberOf(parts, `${of} parts`),
		specificGravity: numberOf(gravity, `${of} specific gravity`),
		binderShare: numberOf(binder, `${of} binder share`, 0),
		cementShare: numberOf(cement, `${of} cement share`, 0),
		waterShare: numberOf(water, `${of} water share`, 0),
		pricePerMass: pricePerUnit(numberOf, of, row[PACK], row[PACK + 1]),
	};
}

function pigmentOf(row: readonly Cell[]): Pigment {
	const numberOf = numbersOn("Pigments");
	const [name, , , , maximum, , pack, price] = row;
	return {
		name: String(name),
		maximum: numberOf(maximum, `${name}: maximum dose`, MOST_PIGMENT),
		pricePerGram: pricePerUnit(numberOf, `${name}:`, pack, price),
	};
}

/** Pack price over pack; 0 where one of them is not typed. */
function pricePerUnit(
	numberOf: NumberOf,
	of: string,
	pack: Cell | undefined,
	price: Cell | undefined,
): number {
	const size = numberOf(pack, `${of} pack`, 0);
	return size > 0 ? numberOf(price, `${of} pack price`, 0) / size : 0;
}
