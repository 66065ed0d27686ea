/** What a picture of the job is drawn from. */
import type { JobView } from "./messages";
import { filledRows, numberIn, plainRows } from "./plain";
import { readJob } from "./readjob";

export function viewOf(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): JobView {
	const read = readJob(spreadsheet, job, ["Job", "Tones", "Quote"]);
	const pieces = plainRows(read.cells("Job.pieces"));
	const there = pieces.map(([name]) => name !== "");
	const beside = (cells: string) =>
		read
			.cells(cells)
			.map(([text]) => String(text ?? ""))
			.filter((_, row) => there[row]);
	const pigments = read.cells("Tones.pigments")[0] ?? [];
	const colors = read.cells("Tones.expected").map(([color]) => String(color));
	return {
		number: job,
		title: String(read.cell("Job.title")),
		units: read.studio.units,
		pieces: pieces.filter((_, row) => there[row]),
		faces: beside("Job.faces"),
		notches: beside("Job.notches"),
		cutouts: filledRows(read.cells("Job.cutouts")),
		tones: read.cells("Tones.tones").flatMap(([name, share, ...doses], row) =>
			name === "" || name === undefined
				? []
				: [
						{
							name: String(name),
							share: numberIn(share) ?? 0,
							color: /^#[0-9a-f]{6}$/.test(colors[row] ?? "")
								? (colors[row] ?? "")
								: "",
							doses: Object.fromEntries(
								pigments.flatMap((pigment, column) =>
									pigment === "" || !numberIn(doses[column])
										? []
										: [[String(pigment), numberIn(doses[column]) ?? 0]],
								),
							),
						},
					],
		),
		mix: String(read.cell("Tones.mix")),
		hasPicture: read.tabs.some(({ tab }) =>
			tab.blocks.some(({ slot }) => slot === "picture"),
		),
	};
}
