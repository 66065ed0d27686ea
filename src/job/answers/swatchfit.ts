/** What the Swatches tab says of its rows: what each is not good for, how it agrees with the others, what to cast next. */
import { colorDifference } from "../../calc/ciede2000";
import { percent } from "../../calc/errors";
import type { StudioSwatch } from "../../calc/expected";
import { agreements, leftOutDifferences } from "../../calc/leaveout";
import { nameKey } from "../../calc/names";
import { nextSwatch } from "../../calc/nextswatch";
import { paletteOf } from "../../calc/palette";
import type { SwatchRow } from "../../calc/tonecolor";
import { SWATCH } from "../fields/swatch";
import { isBlank } from "../reading/cells";
import type { StudioFile, SwatchInput } from "../studiofile";
import { isInvented } from "./given";
import {
	attempt,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	missing,
	readField,
} from "./known";
import { dosedBySwatches, GROWN_DAYS, swatchOf } from "./swatchset";

export interface SwatchNote {
	/** What it is not good for; blank where it is good for all. */
	notGoodFor: Known<string>;
	/** CIEDE2000 from what the other swatches say of its dose. */
	offOthers: Known<number> | undefined;
	/** CIEDE2000 from the color that its recipe was for. */
	offWanted: Known<number> | undefined;
	/** Its place among the casts of its recipe. */
	cast: string;
}

/** A pigment among swatches of one mix, finish, sealing and state. */
export interface PigmentNote {
	kinds: readonly string[];
	pigment: string;
	count: number;
	/** Of binder. */
	strongest: number;
	/** Mean of what its swatches are off the others by. */
	mean: Known<number>;
	/** The swatch that disagrees, its place in the file, and by how much. */
	odd: { swatch: number; difference: number } | undefined;
	next: Known<string>;
}

export interface SwatchFit {
	swatches: readonly SwatchNote[];
	pigments: readonly PigmentNote[];
}

type Read = ReturnType<typeof swatchOf>;

interface Group {
	kinds: readonly string[];
	/** Places in the file. */
	places: number[];
	rows: SwatchRow[];
}

export function swatchFit(studio: StudioFile): SwatchFit {
	const { swatches = [], swatchPigments = [] } = studio;
	const names = dosedBySwatches(swatchPigments, swatches);
	const read = swatches.map((row, i) => swatchOf(row, i, names));
	const groups = groupsOf(swatches, read);
	const offOthers = new Map<number, number>();
	for (const { places, rows } of groups)
		for (const [i, difference] of leftOutDifferences(rows).entries())
			if (difference !== undefined) offOthers.set(places[i] ?? -1, difference);
	return {
		swatches: swatches.map((row, i) => ({
			notGoodFor: from(read[i] ?? missing(""), (own) =>
				notGoodFor(row, own, names),
			),
			offOthers: offOthers.has(i) ? is(offOthers.get(i) ?? 0) : undefined,
			offWanted: offWanted(row),
			cast: castOf(swatches, i),
		})),
		pigments: groups.flatMap((group) => pigmentNotes(group, names)),
	};
}

/** Swatches that may be compared: grown, with a color and a dose, of the same mix, finish, sealing and state. */
function groupsOf(
	swatches: readonly SwatchInput[],
	read: readonly Read[],
): Group[] {
	const groups = new Map<string, Group>();
	for (const [i, one] of read.entries()) {
		if (!isKnown(one)) continue;
		const { kinds, doses, lab, unfit, worth } = one.is;
		if (!lab || unfit || doses.every((dose) => dose === undefined)) continue;
		const invented = isInvented(swatches[i]?.remark);
		const key = [...kinds.map(nameKey), invented].join("\n");
		const group = groups.get(key) ?? { kinds, places: [], rows: [] };
		group.places.push(i);
		group.rows.push({ doses: doses.map((dose) => dose ?? 0), lab, worth });
		groups.set(key, group);
	}
	return [...groups.values()];
}

function notGoodFor(
	{ ageDays, read }: SwatchInput,
	{ kinds, doses, lab, unfit }: StudioSwatch,
	names: readonly string[],
): string {
	if (!lab) return "anything yet: measure it";
	const dosed = names.filter((_, i) => (doses[i] ?? 0) > 0);
	const young = unfit && `matching: it changes until day ${GROWN_DAYS}`;
	const unknownAge = isBlank(ageDays) && "a match before its age is noted";
	return [
		young || unknownAge,
		nameKey(kinds[3] ?? "") === "damp" && "dry pieces: damp looks darker",
		read === "photo" && "deciding a match under 3: it is from a photo",
		dosed.length > 1 && "the curve of one pigment: it mixes several",
	]
		.filter(Boolean)
		.join("; ");
}

function offWanted(row: SwatchInput): Known<number> | undefined {
	const [color, wanted] = [
		readField(SWATCH, "color", row, "metric"),
		readField(SWATCH, "wanted", row, "metric"),
	];
	if ("missing" in wanted) return undefined;
	return "missing" in color
		? missing("cast and measure it")
		: fromBoth(color, wanted, colorDifference);
}

/** `cast 2 of 3`; the last is the one to start from. */
function castOf(swatches: readonly SwatchInput[], at: number): string {
	const name = nameKey(String(swatches[at]?.recipe ?? ""));
	if (name === "") return "";
	const chain = swatches.flatMap(({ recipe }, i) =>
		nameKey(String(recipe ?? "")) === name ? [i] : [],
	);
	const place = chain.indexOf(at) + 1;
	return place === chain.length
		? `cast ${place}, start from it`
		: `cast ${place} of ${chain.length}`;
}

function pigmentNotes(
	{ kinds, places, rows }: Group,
	names: readonly string[],
): PigmentNote[] {
	const cast = rows.map(({ doses }) => doses);
	const palette = attempt(() => paletteOf(rows));
	return agreements(rows).map(({ column, mean, odd }) => {
		const own = rows.filter(({ doses }) =>
			doses.every((dose, i) => dose > 0 === (i === column)),
		);
		const next = from(palette, (known) => {
			const pigment = known.pigments.filter((one) => one.column === column);
			const answer = nextSwatch({ ...known, pigments: pigment }, [], cast);
			return answer.what === "middle"
				? `${percent(answer.dose, 2)} of binder`
				: "another would not tell much";
		});
		return {
			kinds,
			pigment: names[column] ?? "",
			count: own.length,
			strongest: Math.max(...own.map(({ doses }) => doses[column] ?? 0)),
			mean:
				mean === undefined
					? missing("an undosed one and three doses show it")
					: is(mean),
			odd: odd && {
				swatch: places[odd.row] ?? -1,
				difference: odd.difference,
			},
			next: isKnown(palette) ? next : is("an undosed one"),
		};
	});
}
