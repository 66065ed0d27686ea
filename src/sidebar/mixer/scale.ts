/** Weights as the studio's two scales show them. */

import { unitName } from "../../job/reading/units";
import type { MixerState } from "../../sheets/messages";
import { numberShown } from "../shown";

export interface Scale {
	division: number;
	unit: string;
}

export const mixScale = ({ mixDivision, units }: MixerState): Scale => ({
	division: mixDivision,
	unit: unitName("mass", units),
});

export const gramScale = ({ gramDivision }: MixerState): Scale => ({
	division: gramDivision,
	unit: "g",
});

const decimalsOf = (division: number): number =>
	/\.(\d+)$/.exec(String(division))?.[1]?.length ?? 0;

/** The nearest weight that the scale can show; a half is rounded up as a cell rounds it, whatever its last bits say. */
export function onScale(weight: number, { division }: Scale): number {
	const divisions = Math.round(Number((weight / division).toPrecision(12)));
	return Number((divisions * division).toFixed(decimalsOf(division)));
}

/** `12.40 kg`; what was typed finer than the scale shows is shown in full. */
export function weightShown(
	weight: number,
	{ division, unit }: Scale,
	separator: string,
): string {
	const decimals = Math.max(
		decimalsOf(division),
		Math.min(4, decimalsOf(Number(weight.toFixed(4)))),
	);
	return `${numberShown(weight, decimals, separator)} ${unit}`;
}
