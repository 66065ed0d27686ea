import type { Basis } from "../../job/answers/basis";
import type { StudioPalette } from "../../job/answers/recipes";
import type { JobState } from "../../sheets/messages";
import type { JobViewProps } from "../job-choice";

/** What the parts of the Color view share. */
export interface ColorWork extends JobViewProps {
	state: JobState;
	/** Reads the job anew. */
	again(): void;
	basis: Basis;
	studio: StudioPalette;
}
