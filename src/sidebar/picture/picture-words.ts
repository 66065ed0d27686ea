/** What the picture says of itself. */

import { isPlaced } from "../../calc/cutoutplan";
import type { Dimensions } from "../../calc/shapes";
import { sum } from "../../calc/sum";
import { percentShown } from "../shown";
import type { SeenPiece, SeenTone } from "./drawn-piece";

export type View = "above" | "mold";

/** Cast face down, left and right change sides in the mold; face up they do not; where it is not said, face down is meant. */
export const isMirrored = (view: View, face: string): boolean =>
	view === "mold" && face !== "face up";

/** From where it is seen, in one sentence. */
export function viewText(
	view: View,
	face: string,
	shape: Dimensions["shape"],
): string {
	if (view === "above")
		return shape === "basin"
			? "The finished piece, seen into from above."
			: `The finished piece, seen from ${shape === "tube" ? "the side" : "above"}.`;
	if (face === "face up")
		return "As the mold sees it: cast face up, so left and right stay as in the finished piece.";
	return "As the mold sees it, mirrored: cast face down, left and right change sides.";
}

/** What the job does not say and the picture had to choose, and what it draws otherwise than it is seen. */
export function chosenText({
	outline: { shape },
	cutouts,
	drop,
	notchAt,
}: Pick<SeenPiece, "outline" | "cutouts" | "drop" | "notchAt">): string[] {
	const notch: Partial<Record<typeof shape, string>> = {
		L: "Notch at is blank on the Job tab: here the finished piece has it back right.",
		U: "The notch is drawn in the middle of the longer side.",
		area: "The outline of an area is not in the job: a rectangle of the same area stands for it.",
	};
	const said = shape !== "area" && notchAt !== "";
	return [
		said ? "" : (notch[shape] ?? ""),
		cutouts.every(isPlaced)
			? ""
			: "Where cutouts lie is not in the job: they stand evenly along the middle.",
		drop?.sides.length === 0
			? "Drop edge on is blank on the Job tab: the drop edge is not drawn."
			: "",
		drop?.sides.length
			? "Drop edges are folded out, half as high as they are."
			: "",
	].filter(Boolean);
}

const known = ({ color }: SeenTone): boolean => /^#[0-9a-f]{6}$/i.test(color);

/** Each tone's color; grays from light to dark stand for those that are not known. */
export const colorsOf = (tones: readonly SeenTone[]): string[] =>
	tones.map((tone, i) => {
		if (known(tone)) return tone.color;
		const gray = Math.round(220 - (150 * i) / Math.max(1, tones.length - 1));
		return `#${gray.toString(16).padStart(2, "0").repeat(3)}`;
	});

/** Said where a color is a placeholder; blank where all are known. */
export function placeholderText(tones: readonly SeenTone[]): string {
	const missing = tones.filter((tone) => !known(tone));
	if (missing.length === 0) return "";
	const names = missing.map(({ name }) => name).join(", ");
	return `Gray is a placeholder for ${missing.length === tones.length ? "all tones" : names} until the Swatches tab has samples.`;
}

/** Tones with their shares of the batch, e.g. `Shell 40%`. */
export function sharesText(
	tones: readonly SeenTone[],
	separator: string,
): string[] {
	const total = sum(tones.map(({ share }) => share));
	return tones.map(({ name, share }) => {
		const rounded = Math.round((share / total) * 1000) / 1000;
		return `${name} ${percentShown(rounded, separator)}`;
	});
}
