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
	/** Of the finished piece, seen from above: the corner of an L's notch (`back right`), the side of a U's. */
	notch?: string;
	/** Sides with a drop edge: `front and left`, or `all around`. */
	dropOn?: string;
}

export interface CutoutInput {
	piece: string;
	count: number;
	shape: string;
	a: Length;
	b?: Length;
}

/** A former that keeps mix out; its size by volume, or by a × b × depth. */
export interface KnockoutInput {
	piece: string;
	what: string;
	volume?: number;
	a?: Length;
	b?: Length;
	depth?: Length;
	/** Its own mass. */
	mass?: number;
	/** How many in each piece. */
	count?: number;
	/** The mass that holds each down. */
	held?: number;
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
	/** `yyyy-mm-dd` */
	dueDate?: string;
	/** Name of a mix of the Mixes tab. */
	mix: string;
	waste?: number;
	pieces: readonly PieceInput[];
	cutouts?: readonly CutoutInput[];
	knockouts?: readonly KnockoutInput[];
	tones: readonly ToneInput[];
}
