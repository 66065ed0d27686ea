/** The demo with all that its checks need, so that each of them is fine. */
import type { SettingKey } from "../../../src/job/fields/settings";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import { starterStudio } from "../../../templates/starterstudio";
import { demoJob } from "./demofiles";

const MEASURED: Partial<JobFile> = {
	dryingAir: 20,
	dryingHumidity: 0.6,
	dryingMix: 20,
	dryingWind: 1,
	pours: [1, 2].map((load) => ({
		load,
		dryTemperature: 18,
		waterTemperature: 15,
	})),
};

export const soundJob = (): JobFile => {
	const job = demoJob("metric");
	const pieces = job.pieces.map((row) => ({ ...row, moldMass: 30 }));
	return { ...job, ...MEASURED, pieces };
};

/** What a studio types itself; of a mix so strong that the bar may be carried flat as it leaves the mold. */
const TYPED: Partial<Record<SettingKey, number>> = {
	one_person: 23,
	equipment: 250,
	flexural: 40,
};

export const soundStudio = (): StudioFile => {
	const starter = starterStudio("metric");
	return { ...starter, settings: { ...starter.settings, ...TYPED } };
};
