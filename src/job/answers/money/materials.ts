/** What the job takes of each material, in the units in which it is bought, and what that costs. */
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import { GOODS_STARTS, type GoodsRow } from "../../fields/cost";
import { PIGMENT } from "../../fields/pigment";
import { isBlank } from "../../reading/cells";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import { inUnit } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	readRow,
} from "../known";
import { ingredientMasses } from "../mix";
import type { MoldAnswer } from "../mold/mold";
import { knownOr, type Material, priced } from "./pricing";
import { countedGood, goodsMaterial, sealerMaterial } from "./shopgoods";

export interface MaterialsAnswer {
	/** Ingredients, for the pieces, their waste and the paste. */
	mix: Known<readonly Material[]>;
	pigments: readonly Material[];
	sealer: Material;
	/** Molds and whatever else is bought by the piece. */
	goods: readonly Material[];
}

export const materialsAnswer = (
	basis: Basis,
	cure: Pick<CureAnswer, "finishing">,
	mold: Pick<MoldAnswer, "goods">,
): MaterialsAnswer => ({
	mix: mixMaterials(basis, cure),
	pigments: pigmentMaterials(basis, cure),
	sealer: sealerMaterial(basis, cure),
	goods: goodsOf(basis, mold),
});

/** Those typed; where nobody typed how many, as many as the molds take. */
function goodsOf(
	basis: Basis,
	{ goods }: Pick<MoldAnswer, "goods">,
): Material[] {
	const typed = (basis.given.job.goods ?? []).map((row, index) => ({
		row,
		number: index + 1,
	}));
	const nameIs = (name: string) => (each: { row: GoodsRow }) =>
		sameName(String(each.row.what ?? ""), name);
	const counted = goods.filter(
		({ amount }) => !isKnown(amount) || amount.is > 0,
	);
	const ofMold = counted.filter(
		({ name }) =>
			!typed.some((each) => nameIs(name)(each) && !isBlank(each.row.quantity)),
	);
	const own = typed.filter(
		({ row }) =>
			isAskedFor(row) &&
			!ofMold.some(({ name }) => sameName(name, String(row.what ?? ""))),
	);
	return [
		...own.map(({ row, number }) => goodsMaterial(basis, row, number)),
		...ofMold.map((good) =>
			countedGood(basis, good, typed.find(nameIs(good.name))?.row ?? {}),
		),
	];
}

/** A name that a new job has stands for nothing until somebody says how many, or for how much. */
const isAskedFor = ({ what, unit, ...amounts }: GoodsRow): boolean =>
	GOODS_STARTS.some((start) => start.what === what && start.unit === unit)
		? Object.values(amounts).some((typed) => !isBlank(typed))
		: !isBlank(what) || !isBlank(amounts.quantity);

function mixMaterials(
	{ given, mix, loads }: Basis,
	{ finishing }: Pick<CureAnswer, "finishing">,
): Known<readonly Material[]> {
	const totalKg = fromBoth(
		loads.batchKg,
		finishing.pasteKg,
		(batch, paste) => batch + paste,
	);
	const masses = ingredientMasses(mix, totalKg);
	return from(mix.ingredients, (rows) =>
		rows.map(({ ingredient: name, pack, packPrice, waterShare }, i) =>
			priced(
				{
					name,
					unit: unitName("mass", given.units),
					needed: from(masses, (each) => inUnit(given, "mass", each[i] ?? 0)),
					pack: from(knownOr(pack, `the pack of ${name}`), (kg) =>
						inUnit(given, "mass", kg),
					),
					packPrice: knownOr(packPrice, `the price of ${name}`),
				},
				waterShare === 1,
			),
		),
	);
}

const pigmentMaterials = (
	{ given, pigments, tones }: Basis,
	{ finishing }: Pick<CureAnswer, "finishing">,
): Material[] =>
	pigments.map(({ name, solids }, i) => {
		const dryKg = from(all(tones.rows.map((tone) => tone.dryKg)), (each) =>
			sum(each.map((pigmentsKg) => pigmentsKg[i] ?? 0)),
		);
		const boughtKg = fromBoth(dryKg, solids, (dry, share) => dry / share);
		const pasteKg = finishing.pastePigments[i]?.boughtKg ?? is(0);
		const row =
			given.studio.pigments.find((one) =>
				sameName(String(one.name ?? ""), name),
			) ?? {};
		const read = readRow(PIGMENT, row, given.units);
		const of = (key: "pack" | "packPrice", what: string): Known<number> =>
			isKnown(read) ? knownOr(read.is[key], `the ${what} of ${name}`) : read;
		return priced({
			name,
			unit: unitName("pigment", given.units),
			needed: fromBoth(boughtKg, pasteKg, (tonesKg, inPasteKg) =>
				inUnit(given, "pigment", tonesKg + inPasteKg),
			),
			pack: from(of("pack", "pack"), (kg) => inUnit(given, "pigment", kg)),
			packPrice: of("packPrice", "price"),
		});
	});
