/** What the Mold tab answers: what the molds take, a block a piece, and beside it the boards with their cuts in order. */
import { from, isKnown, type Known, orNull, saidOf } from "../answers/known";
import { sidesBend, splitWords } from "../answers/mold/advice";
import type { SawnPart } from "../answers/mold/cutlist";
import { boardName, type MoldAnswer } from "../answers/mold/mold";
import type { PieceAnswer } from "../answers/pieces";
import { wholeFrom } from "../answers/whole";
import { onTape } from "../reading/tape";
import { fromSi, type UnitSystem, unitName } from "../reading/units";
import type { TabAnswer, TabInput, Value } from "./tab";

/** Rows that the tab has room for. */
export const MOLD_ROWS = 96;

/** Columns of the left table; the cuts stand beyond a blank one. */
const LEFT = 6;
const RIGHT = 7;

type Line = readonly Value[];

export const JOB_MOLD: TabAnswer = {
	name: "JOB_MOLD",
	summary:
		"What the molds of a job take, the parts of each by name, and where to cut them from boards.",
	needs: ["head", "pieces", "tones", "cure", "mixes"],
	shape: "table",
	shown: [
		{ label: "Piece", format: "text", wrap: true },
		{ label: "What", format: "text", wrap: true },
		{ label: "Length, {length}", format: "length", unit: "length" },
		{ label: "Height or width, {length}", format: "length", unit: "length" },
		{ label: "How many", format: "number" },
		{ label: "What to know", format: "text", wrap: true },
		{ label: "", format: "text" },
		{
			label: "Board, cuts in order",
			format: "text",
			wrap: true,
			by: "BOARDS_NEEDED",
		},
		{ label: "Length", format: "length", unit: "length", by: "BOARDS_NEEDED" },
		{ label: "Width", format: "length", unit: "length", by: "BOARDS_NEEDED" },
		{ label: "x", format: "length", unit: "length", by: "BOARDS_NEEDED" },
		{ label: "y", format: "length", unit: "length", by: "BOARDS_NEEDED" },
		{ label: "Turned", format: "text" },
		{ label: "First cut", format: "text" },
	],
	values(input) {
		const mold = wholeFrom(input).mold();
		const left = [
			...goodsLines(mold),
			...mold.pieces.flatMap((_, index) => pieceLines(input, mold, index)),
		];
		const right = cutLines(mold, input);
		const count = Math.max(left.length, right.length);
		const rows = Array.from({ length: count }, (_, row) => [
			...wide(left[row] ?? [], LEFT),
			"",
			...wide(right[row] ?? [], RIGHT),
		]);
		if (count <= MOLD_ROWS) return rows;
		return [
			...rows.slice(0, MOLD_ROWS - 1),
			[
				"",
				`Look: ${count - MOLD_ROWS + 1} more rows have no room here: fewer pieces a job, or its answers as JSON`,
			],
		];
	},
};

const wide = (line: Line, columns: number): Value[] => [
	...line,
	...Array<Value>(columns - line.length).fill(""),
];

/** A sentence in the last column; nothing where there is nothing to say. */
const sentence = (
	what: string,
	said: Known<string | undefined>,
	piece = "",
): Line[] =>
	isKnown(said) && !said.is ? [] : [[piece, what, "", "", "", said]];

function goodsLines(mold: MoldAnswer): Line[] {
	return [
		...mold.goods.map(
			({ name, unit, amount }): Line => [
				"All molds",
				`${name}, ${unit}`,
				"",
				"",
				amount,
				name === "Mold sheet" ? boardsSaid(mold) : "",
			],
		),
		["All molds", "Corners to seal", mold.sealantM],
		...mold.leftOut.map(
			(why): Line => ["Not counted", "", "", "", "", { missing: why }],
		),
		[],
	];
}

/** Fewest possible is only said where it is proven. */
function boardsSaid({ nesting }: MoldAnswer): Value {
	if (!isKnown(nesting)) return "";
	const { boards, bound } = nesting.is;
	if (boards === 0) return "";
	return boards === bound
		? "the fewest possible"
		: `${boards - 1} not ruled out`;
}

function pieceLines(input: TabInput, mold: MoldAnswer, index: number): Line[] {
	const piece = input.pieces[index];
	const own = mold.pieces[index];
	if (!piece || !own) return [];
	const count = orNull(own.count) ?? 0;
	const rows = mold.strips.filter((row) => row.piece === own.name);
	const flat = orNull(own.takes)?.parts.filter(({ stands }) => !stands) ?? [];
	return [
		[
			own.name,
			"In the mold, seen from above",
			"",
			"",
			"",
			saidOf(moldWord(piece, "hand")),
		],
		...sentence("Notch", moldWord(piece, "notch")),
		...sentence("Drop edge on", moldWord(piece, "drop")),
		...sentence("Cutouts", moldWord(piece, "cutouts")),
		...sentence("Sides under mix", sidesBend(input.given, input.mix, own)),
		...sentence("Weakest section", weakestOf(input, piece)),
		...sentence("How to carry it", piece.carry()),
		...piece
			.handling()
			.moments.flatMap(({ when, said }) =>
				sentence(when === "demold" ? "At demolding" : "At delivery", said),
			),
		...sentence("Larger than a load", splitWords(input.given, piece)),
		...flat.map(
			({ name, madeOf, lengthM, widthM }): Line => [
				"",
				madeOf === "plug" ? `${name}, a plug or pipe` : name,
				lengthM,
				widthM,
				count,
			],
		),
		...rows.map(
			({ part, madeOf, lengthM, heightM, count: many }): Line => [
				"",
				madeOf === "bent strip" ? `${part}, bent strip` : part,
				lengthM,
				heightM,
				many,
			],
		),
		...knockoutLines(input, own.name),
		[],
	];
}

/** Where a piece breaks first when it is carried flat, and how much concrete is left across it. */
const weakestOf = ({ units }: TabInput, piece: PieceAnswer): Known<string> =>
	from(
		piece.handling().section,
		({ netM, at }) =>
			`${at}; ${onTape(netM, units)} ${unitName("length", units)} of concrete left across`,
	);

const moldWord = (
	{ mold }: PieceAnswer,
	key: "hand" | "notch" | "drop" | "cutouts",
): Known<string> => {
	if (!isKnown(mold)) return mold;
	const word = mold.is[key];
	return word.startsWith("Look: ") ? { look: word.slice(6) } : { is: word };
};

/** What keeps each typed knockout of the piece from floating. */
const knockoutLines = ({ given, knockouts }: TabInput, name: string): Line[] =>
	(given.job.knockouts ?? []).flatMap((row, index) => {
		const answer = knockouts[index];
		const isOwn =
			String(row.piece ?? "")
				.trim()
				.toLowerCase() === name.trim().toLowerCase();
		return isOwn && answer
			? [
					[
						"",
						`Hold down each ${String(row.what ?? "knockout")}, ${massUnit(given.units)}`,
						"",
						"",
						massOf(answer.upliftKg, given.units),
						answer.verdict,
					],
				]
			: [];
	});

function cutLines(mold: MoldAnswer, { units }: TabInput): Line[] {
	if (!isKnown(mold.nesting)) return [[mold.nesting]];
	const trimM = orNull(mold.workshop)?.trimM ?? 0;
	return mold.nesting.is.sheets.flatMap((sheet, index) => [
		[`${index + 1}: ${boardName(mold, sheet, units)}`],
		...sheet.placed.map((one): Line => {
			const offM = sheet.offcut ? 0 : trimM;
			return [
				(one.part as SawnPart).name,
				one.lengthM,
				one.widthM,
				one.xM + offM,
				one.yM + offM,
				one.turned ? "turned" : "",
				one.alongFirst ? "along" : "across",
			];
		}),
		[],
	]);
}

const massUnit = (units: UnitSystem): string => unitName("mass", units);

const massOf = (kg: Known<number>, units: UnitSystem): Value =>
	isKnown(kg) ? fromSi(kg.is, "mass", units) : kg;
