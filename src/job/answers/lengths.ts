import type { Typed } from "../fields/field";
import { isBlank, lengthIn } from "../reading/cells";
import type { Given } from "./given";
import { attempt, type Known, missing } from "./known";

/** A typed length, m. */
export const readLength = (
	{ units }: Given,
	name: string,
	typed: Typed | undefined,
): Known<number> =>
	isBlank(typed) ? missing(name) : attempt(() => lengthIn(name, typed, units));
