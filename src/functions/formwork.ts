import { InputError, quoted } from "../calc/errors";
import { sealantBeadM3, sideDeflectionM } from "../calc/formwork";
import { fits, type Rectangle, ways } from "../calc/guillotine";
import { nested, trimmed } from "../calc/nesting";
import { sum } from "../calc/sum";
import { plain } from "../job/reading/cells";
import { fromSi, type UnitSystem, unitName } from "../job/reading/units";
import {
	density,
	length,
	number,
	stress,
	table,
	text,
	units,
} from "./arguments";
import { sheetFunction } from "./declare";

const group = "Mold";

/** More parts than this in one job are a slip of the finger. */
const MOST_PARTS = 500;

const NOT_NEGATIVE = { min: 0, blank: 0 };

export const BOARDS_NEEDED = sheetFunction({
	name: "BOARDS_NEEDED",
	group,
	summary: "Where to cut each part from boards, edge to edge, on few boards.",
	limits: `A search with a fixed seed: often the fewest boards, but that is not promised. A part may be turned, so the boards must have no grain that shows. x runs along the board's length and y along its width, from a corner of the trimmed board. Trim is taken off every edge, its blade included. At most ${MOST_PARTS} parts together.`,
	params: {
		parts: table(
			"One row per part: name, length, width and count, e.g. A2:D9",
			{
				name: text("Name of the part"),
				length: length("Length"),
				width: length("Width"),
				count: number("How many", { min: 0, whole: true }),
			},
		),
		board_length: length("Length of a board, e.g. 2800"),
		board_width: length("Width of a board, e.g. 2070"),
		kerf: length("Width of the saw's cut, e.g. 3; blank is 0", NOT_NEGATIVE),
		trim: length(
			"Taken off each edge first, e.g. 10; blank is 0",
			NOT_NEGATIVE,
		),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per part placed",
		columns: [
			{ text: "board" },
			{ text: "part" },
			{ text: "x", unit: "length" },
			{ text: "y", unit: "length" },
			{ text: "length as placed", unit: "length" },
			{ text: "width as placed", unit: "length" },
		],
	},
	example: {
		shown: ["A2:D3", "2440", "1220", "3", "10"],
		values: [
			[
				["Base", 2400, 900, 1],
				["Side", 2400, 60, 2],
			],
			2440,
			1220,
			3,
			10,
		],
		answer: [
			[1, "Base", 10, 10, 2400, 900],
			[1, "Side", 10, 913, 2400, 60],
			[1, "Side", 10, 976, 2400, 60],
		],
		working:
			"10 mm off each edge leave 2420 × 1200; 900 + 3 + 60 + 3 + 60 = 1026 of 1200",
	},
	source:
		"Guillotine cuts; parts of some boards are cut anew in random order (ours)",
	compute: ({ parts, board_length, board_width, kerf, trim }, units) => {
		if (2 * trim >= Math.min(board_length, board_width))
			throw new InputError(
				`trim must be below half of the board (${sizeText({ lengthM: board_length, widthM: board_width }, units)})`,
			);
		const board = trimmed({ lengthM: board_length, widthM: board_width }, trim);
		const count = sum(parts.map((part) => part.count));
		if (count > MOST_PARTS)
			throw new InputError(
				`parts must be ${MOST_PARTS} or less together, got ${count}`,
			);
		if (count === 0) return [["", ""]];
		const all = parts.flatMap(({ row, name, length, width, count }) => {
			const part = { name, lengthM: length, widthM: width, turns: true };
			if (!ways(part).some((way) => fits(way, board)))
				throw new InputError(
					`row ${row}: ${quoted(name)} (${sizeText(part, units)}) is larger than a board (${sizeText(board, units)}${trim > 0 ? " without its trim" : ""})`,
				);
			return Array.from({ length: count }, () => part);
		});
		return nested(all, { offcuts: [], board, kerfM: kerf }).sheets.flatMap(
			({ placed }, index) =>
				placed.map(({ part, xM, yM, lengthM, widthM }) => [
					index + 1,
					part.name,
					xM + trim,
					yM + trim,
					lengthM,
					widthM,
				]),
		);
	},
});

const sizeText = ({ lengthM, widthM }: Rectangle, units: UnitSystem): string =>
	`${[lengthM, widthM].map((sizeM) => plain(fromSi(sizeM, "length", units))).join(" × ")} ${unitName("length", units)}`;

export const FORM_DEFLECTION = sheetFunction({
	name: "FORM_DEFLECTION",
	group,
	summary: "How far a side of the mold bends out between supports.",
	limits:
		"One span, full head of fluid mix over the whole height, and no help from the screws at its foot. Published limits: 1/360 or 1/270 of the span, or 1.6 mm (1/16 in); what bends out shows as a belly on the piece. Damp board creeps: count a night as twice.",
	params: {
		span: length("Between two supports, e.g. 400"),
		height: length("Depth of fluid mix at the side, e.g. 300"),
		thickness: length("Thickness of the board, e.g. 18"),
		modulus: stress(
			"Modulus of elasticity of the board, from its data sheet, e.g. 1600",
		),
		density: density("Fresh density of the mix, e.g. 2300"),
		units: units(),
	},
	answer: { text: "the deflection", unit: "length" },
	example: {
		shown: ["400", "300", "18", "1600", "2000"],
		values: [400, 300, 18, 1600, 2000],
		answer: 1.2611,
		working:
			"5 × 2000 × 9.80665 × 0.3 × 0.4⁴ / (64 × 1600·10⁶ × 0.018³) = 0.0012611 m",
	},
	source:
		"Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed., table 5-2: 5wl⁴/384EI; ACI 347: full liquid head",
	compute: ({ span, height, thickness, modulus, density }) =>
		sideDeflectionM({
			spanM: span,
			heightM: height,
			thicknessM: thickness,
			modulusPa: modulus,
			densityKgPerM3: density,
		}),
});

export const SEALANT_BEAD = sheetFunction({
	name: "SEALANT_BEAD",
	group,
	summary: "Volume of sealant in a rounded bead along a right corner.",
	limits:
		"What stays in the corner, smoothed to the radius: add what the tool wipes off and what stays in the tube, 5 to 15%.",
	params: {
		length: length("Length of all corners together, e.g. 8000"),
		radius: length("Radius of the smoothed bead, e.g. 6"),
		units: units(),
	},
	answer: { text: "the volume", unit: "bead" },
	example: {
		shown: ["7960", "6"],
		values: [7960, 6],
		answer: 61.4963,
		working: "7960 mm × 6² mm² × (1 − π/4) = 61 496 mm³",
	},
	source: "Square of the radius less a quarter circle",
	compute: ({ length, radius }) => sealantBeadM3(length, radius),
});
