/** What people have in their cells: names and order of arguments do not change, and none that may be left out is asked for. */
import { expect, test } from "vitest";
import { registry } from "../../src/functions";

const SIGNATURES = [
	"READ_LENGTH(text, [units])",
	"SLAB_VOLUME(length, width, thickness, [units])",
	"POLYGON_AREA(points, [units])",
	"PIECE_TAKEOFF(pieces, [cutouts], [units])",
	"BATCH_MASS(volume, density, [waste], [units])",
	"WEIGH_OUT(parts, mass)",
	"MIX_DENSITY(parts, specific_gravity, [air], [units])",
	"BINDER_SHARE(parts, binder_share)",
	"WATER_BINDER_RATIO(parts, binder_share, water_share)",
	"MOISTURE_CORRECTION(masses, moisture, absorption)",
	"FIBER_MASS(volume, volume_share, [density], [units])",
	"MIXER_LOADS(castings, capacity)",
	"RESCALE_BATCH(planned, weighed)",
	"PIGMENT_GRAMS(mass, binder_share, dose, [units])",
	"TONE_WEIGHTS(tones, pigments, mass, binder_share, [units])",
	"PULL_OFF_PLAN(tones, pigments, mass, binder_share, [weighed], [units])",
	"PIGMENT_TO_DEEPEN(mass, binder_share, dose_now, dose_wanted, [units])",
	"MIX_TO_LIGHTEN(mass, binder_share, dose_now, dose_wanted, [units])",
	"DOSE_UNCERTAINTY(pigment_grams, pigment_division, mass, mass_division, [weighings], [units])",
	"PIGMENT_HEADROOM(doses, maxima, [cement_share])",
	"COLOR_DIFFERENCE(a, b)",
	"TONE_COLOR(doses, colors, dose)",
	"DOSE_FOR_COLOR(doses, colors, color)",
	"PIGMENTS_FOR_COLOR(color, doses, colors, [maxima], [most])",
	"RECIPE_AFTER_CAST(color, recipe, measured, doses, colors, [maxima])",
	"FAR_COLOR(colors, shares)",
	"BAND_WIDTH(start, folds, [units])",
	"FOLDS_UNTIL_BLURRED(start, distance, [units])",
	"MIX_TEMPERATURE(solid_masses, solid_temps, water_mass, water_temp, [ice_mass], [units])",
	"WATER_TEMPERATURE_FOR(target, solid_masses, solid_temps, water_mass, [units])",
	"ICE_FOR(target, solid_masses, solid_temps, water_mass, water_temp, [units])",
	"EVAPORATION_RATE(air_temp, humidity, mix_temp, wind, [units])",
	"TEMPERATURE_TIME_FACTOR(hours, temps, [datum], [units])",
	"EQUIVALENT_AGE(hours, temps, [reference], [q], [units])",
	"STRENGTH_AT_AGE(age_days, [cement])",
	"AGE_FOR_STRENGTH(share, [cement])",
	"WORKING_TIME(minutes, tested_temp, mix_temp, [units])",
	"LIFT_LIMIT(reach, height, travel, [twist], [lifts_per_minute], [hours], [grip], [units])",
	"PEOPLE_TO_LIFT(weight, one_person_limit)",
	"CARRY_STRESS(pieces, [cutouts], density, [carried], [units])",
	"SELF_WEIGHT_STRESS(length, thickness, density, [support], [factor], [units])",
	"MODULUS_OF_RUPTURE(compressive_strength, [units])",
	"FORM_PRESSURE(depth, density, [units])",
	"UPLIFT(volume, density, former_mass, [units])",
	"VOID_FILL(area, void_share, depth, [skim], [waste], [units])",
	"COATING_AMOUNT(area, coverage, [coats], [waste], [units])",
	"PACKS_TO_BUY(needed, on_hand, pack)",
	"PRICE_FOR_MARGIN(cost, margin)",
	"MARGIN_OF(price, cost)",
	"SPLIT_MONEY(total, shares, [decimals])",
];

test.each(SIGNATURES)("%s", (signature) => {
	const [, name, given = ""] = /^(\w+)\((.*)\)$/.exec(signature) ?? [];
	const params = registry.find((fn) => fn.name === name)?.params ?? {};
	const args = given.split(", ");
	expect(Object.keys(params).slice(0, args.length)).toEqual(
		args.map((arg) => arg.replace(/[[\]]/g, "")),
	);
	for (const [i, [arg, { optional }]] of Object.entries(params).entries())
		if (!args[i] || args[i].startsWith("["))
			expect(optional, `${arg} may be left out`).toBe(true);
});
