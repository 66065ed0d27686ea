/** A job with the names of its mix and its pigments as the studio spells them, as dropdowns offer them. */
import type { JobFile, ToneInput } from "./jobfile";
import { isBlank } from "./reading/cells";
import {
	mixNames,
	type StudioFile,
	spelled,
	studioPigments,
} from "./studiofile";

export function spelledJob(job: JobFile, studio: StudioFile): JobFile {
	const { mix, pigments, tones } = job;
	const own = studioPigments(studio);
	const toneAs = ({ doses, ...tone }: ToneInput): ToneInput => ({
		...tone,
		...(doses && {
			doses: Object.fromEntries(
				Object.entries(doses)
					.filter(([, dose]) => !isBlank(dose))
					.map(([name, dose]) => [spelled(name, own), dose]),
			),
		}),
	});
	return {
		...job,
		...(!isBlank(mix) && { mix: spelled(String(mix), mixNames(studio)) }),
		...(pigments && { pigments: pigments.map((name) => spelled(name, own)) }),
		tones: tones.map(toneAs),
	};
}
