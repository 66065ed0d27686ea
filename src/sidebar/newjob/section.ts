/** What every part of the form gets. */
import type { PanelStart } from "../../sheets/messages";
import type { Figures } from "./figures";
import type { JobForm } from "./form";

export interface SectionProps {
	form: JobForm;
	start: PanelStart;
	figures: Figures;
	edit(change: (form: JobForm) => JobForm): void;
}
