/** A job as a person gives it: in a file, or from the panel. */

export type UnitSystem = "metric" | "us";

/** A length as typed (`8' 1/2"`) or a number in the workbook's unit. */
export type Length = string | number;

export interface PieceInput {
	name: string;
	quantity: number;
	shape: string;
	a: Length;
	b?: Length;
	c?: Length;
	d?: Length;
	thickness: Length;
	dropHeight?: Length;
	dropRun?: Length;
	dropThickness?: Length;
	/** How it lies in the mold; blank where nobody said. */
	face?: "face up" | "face down";
}

export interface CutoutInput {
	piece: string;
	count: number;
	shape: string;
	a: Length;
	b?: Length;
}

export interface ToneInput {
	name: string;
	share: number;
	/** Dry pigment as a share of binder, by pigment name. */
	doses: Readonly<Record<string, number>>;
}

export interface JobInput {
	/** Free text about the file; not read. */
	about?: readonly string[];
	/** Must be the workbook's; decides it where there are no studio tabs yet. */
	units: UnitSystem;
	client: string;
	title: string;
	/** `yyyy-mm-dd` */
	pourDate?: string;
	/** Name of a mix of the Mixes tab. */
	mix: string;
	waste?: number;
	pieces: readonly PieceInput[];
	cutouts?: readonly CutoutInput[];
	tones: readonly ToneInput[];
}
