/** The checks of `checks.json`, by topic. */
import type { Lab } from "../../../src/calc/color";
import { type Palette, paletteOf } from "../../../src/calc/palette";
import file from "./checks.json";

type Triple = readonly number[];

/** A case as its topic has it; the file names its source and its tolerance. */
// biome-ignore lint/suspicious/noExplicitAny: each topic has fields of its own
type Case = any;

export const casesOf = (topic: string): [id: string, each: Case][] =>
	(file.cases as Case[])
		.filter((each) => each.topic === topic)
		.map((each) => [each.id, each]);

export const labOf = ([l = 0, a = 0, b = 0]: Triple): Lab => ({ l, a, b });

export const palette = ({ swatches }: Case): Palette =>
	paletteOf(
		swatches.map((each: Case) => ({
			doses: each.doses,
			lab: labOf(each.lab),
		})),
	);
