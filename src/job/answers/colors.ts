/** What the tones look like by the studio's swatches, and whether they can be told apart. */
import { farColor, hexOfLab, type Lab, labOfHex } from "../../calc/color";
import {
	type ExpectedColor,
	expectedColors,
	swatchesUsed,
} from "../../calc/expected";
import type { Basis } from "./basis";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	type Said,
	saidOf,
} from "./known";
import { swatchSet } from "./swatchset";

interface ColorAnswer {
	name: string;
	/** `#rrggbb`. */
	color: Known<string>;
	/** The tone that looks most like it, and CIEDE2000 to it; undefined for an only tone. */
	nearest: Known<ExpectedColor["nearest"]>;
	/** Whether it can be told from the others, and whether its dose is allowed. */
	toldApart: Said;
}

export interface ColorsAnswer {
	tones: readonly ColorAnswer[];
	/** How many swatches count, and why the others do not. */
	used: Known<string>;
	/** `#rrggbb` of all tones together, seen from across the room. */
	far: Known<string>;
}

// Differences at which the words change: common practice, no source.
const HARD_TO_TELL = 2;
const LOST_ACROSS_THE_ROOM = 5;

export function colorsAnswer(basis: Basis): ColorsAnswer {
	const set = swatchSet(basis);
	const expected = fromBoth(basis.tones.dry, set, expectedColors);
	const tones = basis.tones.rows.map(({ name, headroom }, i) => {
		const one = from(expected, (each) => each[i] as ExpectedColor);
		const lab = known(one, ({ lab, remark }) =>
			lab ? is(lab) : missing(`its color: ${remark}`),
		);
		const nearest = known(one, (color) => nearestOf(basis, color));
		return {
			name,
			color: from(lab, hexOfLab),
			nearest: isKnown(lab) ? nearest : lab,
			toldApart: toldApart(headroom, lab, nearest),
		};
	});
	return { tones, used: from(set, swatchesUsed), far: farOf(basis, tones) };
}

const known = <A, B>(a: Known<A>, work: (a: A) => Known<B>): Known<B> =>
	isKnown(a) ? work(a.is) : a;

const nearestOf = (
	{ tones }: Basis,
	{ nearest }: ExpectedColor,
): Known<ExpectedColor["nearest"]> =>
	nearest || tones.rows.length === 1
		? is(nearest)
		: missing("the color of another tone");

function toldApart(
	headroom: Known<number>,
	lab: Known<Lab>,
	nearest: Known<ExpectedColor["nearest"]>,
): Said {
	if (!isKnown(headroom)) return saidOf(headroom);
	if (headroom.is < 0) return saidOf(look("over the pigment limit"));
	if (!isKnown(lab)) return saidOf(lab);
	if (!isKnown(nearest)) return saidOf(nearest);
	if (!nearest.is) return saidOf(is(""));
	const { name, difference } = nearest.is;
	if (difference < HARD_TO_TELL)
		return saidOf(look(`hard to tell from ${name}`));
	return saidOf(
		is(
			difference < LOST_ACROSS_THE_ROOM
				? "seen close by, lost across the room"
				: "stands apart across the room",
		),
	);
}

function farOf(
	{ tones }: Basis,
	colors: readonly ColorAnswer[],
): Known<string> {
	return known(tones.typed, (typed) => {
		const areas = typed.flatMap(({ share }, i) => {
			const color = colors[i]?.color ?? missing("its color");
			return share > 0
				? [from(color, (hex) => ({ lab: labOfHex(hex), share }))]
				: [];
		});
		const seen = all(areas);
		return "missing" in seen
			? missing("it needs the color of every tone")
			: from(seen, (each) => hexOfLab(farColor(each)));
	});
}
