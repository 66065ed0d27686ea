/** The molds as plain JSON, in the workbook's units: what is not known is null. */
import { fromSi, type Quantity, type UnitSystem } from "../../reading/units";
import { type Known, orNull } from "../known";
import type { CostAnswer } from "../money/cost";
import type { SawnPart } from "./cutlist";
import { boardName, type MoldAnswer, type MoldGood } from "./mold";

export function moldJson(
	mold: MoldAnswer,
	{ materials }: Pick<CostAnswer, "materials">,
	units: UnitSystem,
) {
	const inUnit = (quantity: Quantity, si: number) =>
		fromSi(si, quantity, units);
	const length = (si: number) => inUnit("length", si);
	const known = (quantity: Quantity, one: Known<number>) => {
		const si = orNull(one);
		return si === null ? null : inUnit(quantity, si);
	};
	const nesting = orNull(mold.nesting);
	const trimM = orNull(mold.workshop)?.trimM ?? 0;
	return {
		boards: (nesting?.sheets ?? []).map((sheet) => ({
			stock: boardName(mold, sheet, units),
			parts: sheet.placed.map(({ part, xM, yM, lengthM, widthM, turned }) => ({
				piece: (part as SawnPart).of.piece,
				part: (part as SawnPart).of.name,
				length: length(lengthM),
				width: length(widthM),
				x: length(xM + (sheet.offcut ? 0 : trimM)),
				y: length(yM + (sheet.offcut ? 0 : trimM)),
				turned,
			})),
		})),
		boardsNeeded: nesting?.boards ?? null,
		boardsBound: nesting?.bound ?? null,
		leftOut: mold.leftOut,
		strips: mold.strips.map(({ lengthM, heightM, ...row }) => ({
			...row,
			length: length(lengthM),
			height: length(heightM),
		})),
		sealant: {
			length: known("length", mold.sealantM),
			volume: known("bead", mold.sealantM3),
			tubes: orNull(mold.tubes),
		},
		release: { area: known("area", mold.releaseM2) },
		goods: mold.goods.map(({ name, unit, amount }) => ({
			name,
			unit,
			amount: orNull(amount),
			cost: costOf(name, materials.goods),
		})),
	};
}

/** What the goods of this name cost in the job, as counted or as typed. */
function costOf(
	name: MoldGood["name"],
	goods: CostAnswer["materials"]["goods"],
): number | null {
	const material = goods.find((one) => one.name === name);
	return material ? orNull(material.cost) : 0;
}
