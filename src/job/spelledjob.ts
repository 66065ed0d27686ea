/** A job with the names of its mix and its pigments as the studio spells them, as dropdowns offer them. */
import { sameName } from "../calc/names";
import type { JobFile, ToneInput } from "./jobfile";
import { isBlank } from "./reading/cells";
import type { StudioFile } from "./studiofile";

const spelling =
	(names: readonly unknown[]) =>
	(name: string): string =>
		names.map((own) => String(own ?? "")).find((own) => sameName(own, name)) ??
		name;

export function spelledJob(job: JobFile, studio: StudioFile): JobFile {
	const { mix, pigments, tones } = job;
	const pigmentAs = spelling(studio.pigments.map(({ name }) => name));
	const toneAs = ({ doses, ...tone }: ToneInput): ToneInput => ({
		...tone,
		...(doses && {
			doses: Object.fromEntries(
				Object.entries(doses)
					.filter(([, dose]) => !isBlank(dose))
					.map(([name, dose]) => [pigmentAs(name), dose]),
			),
		}),
	});
	return {
		...job,
		...(!isBlank(mix) && {
			mix: spelling(studio.mixes.map((row) => row.mix))(String(mix)),
		}),
		...(pigments && { pigments: pigments.map(pigmentAs) }),
		tones: tones.map(toneAs),
	};
}
