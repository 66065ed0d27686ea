/** The studio and its jobs as the panel wants them. */
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../template/job";
import type { Mix, PanelStart, Pigment } from "./messages";
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
		pigments: studio.pigments.map((row, index) =>
			pigmentOf(row, `Pigments, row ${index + 1}`),
		),
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

const numbersOf = (studio: Studio) => ({
	mixerCapacity: numberOf(studio.mixerCapacity, "Mixer capacity"),
	gramDivision: numberOf(studio.gramDivision, "Gram scale division"),
	waste: numberOf(studio.waste, "Usual waste"),
	air: numberOf(studio.air, "Air in fresh mix"),
});

/** @throws InputError for anything but a number: a wrong answer in the panel is worse than none. */
function numberOf(
	cell: Cell | undefined,
	what: string,
	blank?: number,
): number {
	if (typeof cell === "number") return cell;
	if (blank !== undefined && (cell === "" || cell === undefined)) return blank;
	throw new InputError(
		`${what} must be a number, got ${cell === "" || cell === undefined ? "a blank cell" : `"${cell}"`}: correct it on its tab`,
	);
}

/** Mixes in the order of their first row. */
function mixesOf({ mixes }: Studio): Mix[] {
	const names = [...new Set(mixes.map(([name]) => String(name)))];
	return names.map((name) => ({
		name,
		ingredients: mixes
			.filter((row) => String(row[0]) === name)
			.map((row) => {
				const [, ingredient, parts, gravity, binder, cement, water] = row;
				const of = `${name}, ${ingredient}:`;
				return {
					name: String(ingredient),
					parts: numberOf(parts, `${of} parts`),
					specificGravity: numberOf(gravity, `${of} specific gravity`),
					binderShare: numberOf(binder, `${of} binder share`, 0),
					cementShare: numberOf(cement, `${of} cement share`, 0),
					waterShare: numberOf(water, `${of} water share`, 0),
					pricePerMass: pricePerUnit(row[PACK], row[PACK + 1], of),
				};
			}),
	}));
}

function pigmentOf(row: readonly Cell[], where: string): Pigment {
	const [name, , , , maximum, , pack, price] = row;
	return {
		name: String(name),
		maximum: numberOf(maximum, `${where}: maximum dose`, MOST_PIGMENT),
		pricePerGram: pricePerUnit(pack, price, `${where}:`),
	};
}

/** Pack price over pack; 0 where one of them is not typed. */
function pricePerUnit(
	pack: Cell | undefined,
	price: Cell | undefined,
	of: string,
): number {
	const size = numberOf(pack, `${of} pack`, 0);
	return size > 0 ? numberOf(price, `${of} pack price`, 0) / size : 0;
}
