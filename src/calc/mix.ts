/** Batches, fresh density, binder and water of a mix given by parts of mass. */
import { InputError } from "./errors";
import { sum } from "./sum";

/** ACI 211.1 counts water at 1000 kg/m³ (62.4 lb/ft³). */
const WATER_KG_PER_M3 = 1000;

/** PVA fiber, 1.30 g/cm³: a figure from memory, found on makers' sheets. */
export const PVA_KG_PER_M3 = 1300;

/** Mass of mix to batch, kg: volume × density × (1 + waste). */
export const batchKg = (batch: {
	volumeM3: number;
	densityKgPerM3: number;
	waste: number;
}): number => batch.volumeM3 * batch.densityKgPerM3 * (1 + batch.waste);

/** @throws InputError when there are no parts or all of them are 0. */
function totalParts(parts: readonly number[]): number {
	const total = sum(parts);
	if (parts.length === 0) throw new InputError("parts is blank");
	if (total <= 0) throw new InputError("parts must not all be 0");
	return total;
}

/**
 * Mass of each ingredient, in the unit of `mass`: part / Σ parts × mass.
 *
 * @throws InputError when all parts are 0.
 */
export function weighOutMasses(
	parts: readonly number[],
	mass: number,
): number[] {
	const total = totalParts(parts);
	return parts.map((part) => (part / total) * mass);
}

export interface Ingredient {
	/** Any unit of mass. */
	part: number;
	/** Relative to water. */
	specificGravity: number;
}

/**
 * Fresh density, kg/m³, by absolute volumes.
 *
 * Σ m / Σ (m / (SG × 1000 kg/m³)) × (1 − air), air as a share of the fresh volume.
 *
 * @throws InputError when all parts are 0.
 * @source ACI 211.1; worked example in NAVEDTRA 14070, ch. 17.
 */
export function freshDensityKgPerM3(
	ingredients: readonly Ingredient[],
	air: number,
): number {
	const mass = totalParts(ingredients.map(({ part }) => part));
	const solidVolume = sum(
		ingredients.map(
			({ part, specificGravity }) => part / (specificGravity * WATER_KG_PER_M3),
		),
	);
	return (mass / solidVolume) * (1 - air);
}

const weighted = (
	rows: readonly { part: number }[],
	shares: readonly number[],
): number => sum(rows.map(({ part }, index) => part * (shares[index] ?? 0)));

/** @throws InputError when there is no binder. */
function binderParts(
	rows: readonly { part: number; binderShare: number }[],
): number {
	totalParts(rows.map(({ part }) => part));
	const binder = weighted(
		rows,
		rows.map(({ binderShare }) => binderShare),
	);
	if (binder <= 0)
		throw new InputError(
			"binder_share must be above 0% for at least one ingredient, got no binder at all",
		);
	return binder;
}

/**
 * Binder mass over fresh mass: Σ (part × its binder share) / Σ parts.
 *
 * @throws InputError when all parts are 0 or there is no binder.
 */
export const binderShareOf = (
	rows: readonly { part: number; binderShare: number }[],
): number => binderParts(rows) / totalParts(rows.map(({ part }) => part));

/**
 * Water over binder by mass: Σ (part × water share) / Σ (part × binder share).
 *
 * @throws InputError when all parts are 0 or there is no binder.
 */
export const waterBinderRatio = (
	rows: readonly { part: number; binderShare: number; waterShare: number }[],
): number =>
	weighted(
		rows,
		rows.map(({ waterShare }) => waterShare),
	) / binderParts(rows);

/**
 * Mass to weigh of a damp material, and the free water in it, in the unit of `dryMass`.
 *
 * Dry mass × (1 + moisture), and dry mass × (moisture − absorption); below 0 the material takes water up.
 *
 * @source ACI 211.1, adjustment for aggregate moisture; US Army EN5466, moisture-adjustment problem.
 */
export const dampMass = (material: {
	dryMass: number;
	moisture: number;
	absorption: number;
}): [toWeigh: number, freeWater: number] => [
	material.dryMass * (1 + material.moisture),
	material.dryMass * (material.moisture - material.absorption),
];

/** Fiber mass, kg: volume × share of it that is fiber × the fiber's density. */
export const fiberKg = (fiber: {
	volumeM3: number;
	volumeShare: number;
	densityKgPerM3: number;
}): number => fiber.volumeM3 * fiber.volumeShare * fiber.densityKgPerM3;
