/** Fills in what a template leaves open: units, the job's prefix, the names of tabs. */

import type { UnitSystem } from "../../job/reading/units";
import { type Quantity, unitName } from "../../job/reading/units";

export interface Tokens {
	units: UnitSystem;
	/** Begins every name of a job, e.g. `job14_`; none in a studio tab. */
	job?: string;
	/** What each tab of the templates is called in the workbook. */
	tabs: Readonly<Record<string, string>>;
	/** The cells of each block by tab and key: `Studio.waste` to `'Studio'!$B$3`. */
	cells?: Readonly<Record<string, string>>;
}

const TOKEN = /\{([a-z]+)(?::([^{}]+))?\}/g;

const QUANTITIES: readonly string[] = [
	"length",
	"area",
	"volume",
	"coating",
	"bead",
	"mass",
	"pigment",
	"density",
	"temperature",
	"stress",
	"pressure",
	"wind",
	"evaporation",
	"coverage",
] satisfies Quantity[];

const isQuantity = (word: string): word is Quantity =>
	QUANTITIES.includes(word);

/** A tab's name as formulas write it. */
export const quoted = (tab: string): string => `'${tab.replace(/'/g, "''")}'`;

/** The text with `{mass}` as `kg`, `{job}` as `job14_`, `{tab:Tones}` as `'14 Tones'`, `{studio:waste}` or `{at:Tones.mix}` as cells. */
export const filled = (text: string, tokens: Tokens): string =>
	text.replace(TOKEN, (whole, word: string, name?: string) => {
		if (word === "tab" && name !== undefined)
			return quoted(tokens.tabs[name] ?? unknown(whole));
		if (word === "studio" && name !== undefined)
			return tokens.cells?.[`Studio.${name}`] ?? unknown(whole);
		if (word === "at" && name !== undefined)
			return tokens.cells?.[name] ?? unknown(whole);
		if (word === "cell" && name !== undefined)
			return placeOf(name, tokens.cells?.[name] ?? unknown(whole));
		if (word === "job") return tokens.job ?? unknown(whole);
		return isQuantity(word) ? unitName(word, tokens.units) : unknown(whole);
	});

/** The first of a block's cells by the template's name of its tab: `Tones.mix` lies at `Tones!B3`. */
const placeOf = (name: string, cells: string): string =>
	`${name.slice(0, name.indexOf("."))}!${cells.slice(cells.lastIndexOf("!") + 1).replace(/\$|:.*/g, "")}`;

function unknown(token: string): never {
	throw new Error(`${token} stands for nothing here`);
}
