/** What the job takes of each material, in the units in which it is bought, and what that costs. */
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import { GOODS, type GoodsRow } from "../../fields/cost";
import { PIGMENT } from "../../fields/pigment";
import { isBlank } from "../../reading/cells";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import { inUnit, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	missing,
	orNull,
	readRow,
} from "../known";
import { ingredientMasses } from "../mix";
import { packedLot } from "./shelf";

export interface Material {
	name: string;
	unit: string;
	needed: Known<number>;
	pack: Known<number>;
	packPrice: Known<number>;
	/** Water of the tap: nobody buys it. */
	isFree: boolean;
	/** Of what the job uses, not of whole packs. */
	cost: Known<number>;
}

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
	cure: CureAnswer,
): MaterialsAnswer => ({
	mix: mixMaterials(basis, cure),
	pigments: pigmentMaterials(basis, cure),
	sealer: sealerMaterial(basis, cure),
	goods: (basis.given.job.goods ?? [])
		.map((row, index) => ({ row, number: index + 1 }))
		.filter(({ row }) => !isBlank(row.what) || !isBlank(row.quantity))
		.map(({ row, number }) => goodsMaterial(basis, row, number)),
});

/** A material with what the job's amount of it costs. */
function priced(
	material: Omit<Material, "cost" | "isFree">,
	isWater = false,
): Material {
	const { name, needed, pack, packPrice } = material;
	const price = all<[number, number]>([pack, packPrice]);
	const isFree = isWater && "missing" in price;
	const cost: Known<number> =
		"missing" in price
			? isFree
				? is(0)
				: missing(`the price of ${name}`)
			: from(price, ([size, money]) => ((orNull(needed) ?? 0) / size) * money);
	return {
		...material,
		isFree,
		cost: isKnown(needed) && needed.is !== 0 ? cost : needed,
	};
}

const knownOr = <T>(value: T | undefined, what: string): Known<T> =>
	value === undefined ? missing(what) : is(value);

function mixMaterials(
	{ given, mix, loads }: Basis,
	{ finishing }: CureAnswer,
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
	{ finishing }: CureAnswer,
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

const SEALER = "Sealer";

/** By a priced pack of it in Stock, or else by the unit and the studio's price. */
function sealerMaterial({ given }: Basis, { finishing }: CureAnswer): Material {
	const lot = packedLot(given, SEALER);
	const isPriced =
		isKnown(lot) && (lot.is.pack ?? 0) * (lot.is.packPrice ?? 0) > 0;
	return priced({
		name: SEALER,
		unit: unitName("coating", given.units),
		needed: from(finishing.sealerM3, (m3) => inUnit(given, "coating", m3)),
		pack: from(lot, ({ pack = 1 }) => (isPriced ? pack : 1)),
		packPrice: isPriced
			? from(lot, ({ packPrice = 0 }) => packPrice)
			: "look" in lot
				? lot
				: setting(given, "sealer_price"),
	});
}

/** Its pack and price are typed, or those of the lot in Stock; a price alone is for one. */
function goodsMaterial(
	{ given }: Basis,
	row: GoodsRow,
	number: number,
): Material {
	const name = String(row.what ?? "").trim() || `row ${number} of the goods`;
	const read = readRow(GOODS, row, given.units);
	const lot = packedLot(given, name);
	const pack = fromBoth(
		read,
		lot,
		(typed, stocked) =>
			typed.pack ??
			stocked.pack ??
			(typed.packPrice === undefined ? undefined : 1),
	);
	const price = fromBoth(
		read,
		lot,
		(typed, stocked) => typed.packPrice ?? stocked.packPrice,
	);
	return priced({
		name,
		unit: String(row.unit ?? "").trim(),
		needed: isKnown(read)
			? knownOr(read.is.quantity, `how many of ${name}`)
			: read,
		pack: isKnown(pack) ? knownOr(pack.is, `the pack of ${name}`) : pack,
		packPrice: isKnown(price)
			? knownOr(price.is, `the price of ${name}`)
			: price,
	});
}
