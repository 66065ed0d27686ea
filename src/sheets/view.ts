/** What a picture of the job is drawn from. */
import type { JobView } from "./messages";
import { filledRows, numberIn, plainRows } from "./plain";
import { type JobRead, readJob } from "./readjob";
import type { Cell } from "./studio";

export function viewOf(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): JobView {
	const read = readJob(spreadsheet, job, ["Job", "Tones"]);
	const pieces = plainRows(read.cells("Job.pieces"));
	const there = pieces.map(([name]) => name !== "");
	const beside = (cells: string) =>
		read
			.cells(cells)
			.map(([text]) => String(text ?? ""))
			.filter((_, row) => there[row]);
	return {
		number: job,
		title: String(read.cell("Job.title")),
		units: read.studio.units,
		pieces: pieces.filter((_, row) => there[row]),
		faces: beside("Job.faces"),
		notches: beside("Job.notches"),
		cutouts: filledRows(read.cells("Job.cutouts")),
		tones: tonesOf(read),
		mix: String(read.cell("Tones.mix")),
	};
}

function tonesOf(read: JobRead): JobView["tones"] {
	const [pigments = []] = read.cells("Tones.pigments");
	const colors = read.cells("Tones.expected").map(([color]) => String(color));
	const dosesOf = (doses: readonly Cell[]) =>
		Object.fromEntries(
			pigments.flatMap((pigment, column) => {
				const dose = numberIn(doses[column]);
				return pigment === "" || !dose ? [] : [[String(pigment), dose]];
			}),
		);
	return read
		.cells("Tones.tones")
		.map(([name = "", share, ...doses], row) => ({
			name: String(name),
			share: numberIn(share) ?? 0,
			color: /^#[0-9a-f]{6}$/.exec(colors[row] ?? "")?.[0] ?? "",
			doses: dosesOf(doses),
		}))
		.filter(({ name }) => name !== "");
}
