import { type Quantity, unitName } from "../../job/reading/units";
import { numberShown, roughly } from "../shown";
import type { JobForm } from "./form";

/** A quantity with its unit, to read: `318 kg`. */
export const withUnit = (
	value: number,
	quantity: Quantity,
	units: JobForm["units"],
	separator: string,
): string => `${roughly(value, separator)} ${unitName(quantity, units)}`;

/** Grams of pigment, to a tenth below 100. */
export const gramsShown = (grams: number, separator: string): string =>
	`${numberShown(grams, grams < 100 && grams > 0 ? 1 : 0, separator)} g`;
