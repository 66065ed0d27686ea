/** The side panel: what the workbook says at the start, then the views. */
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { PanelStart, View } from "../sheets/messages";
import { ChecksView } from "./checks/checks-view";
import { ColorView } from "./color/color-view";
import { focusSoon } from "./focus";
import { Functions } from "./functions/functions";
import type { JobViewProps } from "./job-choice";
import { MixerView } from "./mixer/mixer-view";
import { NewJob } from "./newjob/new-job";
import { Failed, Notice } from "./notice";
import { PictureView } from "./picture/picture-view";
import { RecordView } from "./record/record-view";
import type { Ask } from "./script";
import { Tabs } from "./tabs";
import { useAnswer } from "./use-answer";

/** `;` is read in every file, whatever its locale. */
const ANYWHERE = ";";

/** Where a menu entry opens the panel; blank and 0 where it is for the panel to choose. */
export interface Opening {
	view: string;
	job: number;
}

const VIEWS: readonly [View, string][] = [
	["newjob", "New job"],
	["mixer", "At the mixer"],
	["checks", "Checks"],
	["picture", "Picture"],
	["color", "Color"],
	["record", "Record"],
	["functions", "Functions"],
];

const OF_JOBS: ReadonlySet<View> = new Set([
	"mixer",
	"checks",
	"picture",
	"color",
	"record",
]);

export function Panel({ ask, opening }: { ask: Ask; opening: Opening }) {
	const { answer: start, failure, askAgain } = useAnswer(ask, "panelStart");
	const kept = useKept(ask);
	const [shown, setShown] = useState<View>(
		VIEWS.find(([id]) => id === opening.view)?.[0] ?? "newjob",
	);
	const [chosen, setJob] = useState(opening.job);
	const show = (view: View) => {
		setShown(view);
		// Jobs come and go in the workbook while the panel is open.
		if (start && OF_JOBS.has(view)) askAgain();
	};
	const go = (view: View) => {
		show(view);
		focusSoon(`tab-${view}`);
	};
	const reading = <Notice kind="plain">Reading this workbook…</Notice>;
	/** Said once, in the view that is shown. */
	const unread = failure ? (
		<Failed failure={failure} again={askAgain} />
	) : (
		!start && reading
	);
	const withStart = (
		view: View,
		content: (start: PanelStart) => ComponentChildren,
	) => (
		<>
			{shown === view && unread}
			{start && content(start)}
		</>
	);
	const ofJob = (
		view: View,
		content: (props: JobViewProps) => ComponentChildren,
	) =>
		withStart(view, (start) =>
			start.jobs.length === 0 ? (
				<NoJob begin={() => go("newjob")} />
			) : (
				content({
					ask,
					start,
					job: jobOf(start, chosen),
					setJob,
					inSight: shown === view,
				})
			),
		);
	const contents: { [each in View]: ComponentChildren } = {
		newjob: withStart("newjob", (start) =>
			kept === undefined ? (
				reading
			) : (
				<NewJob ask={ask} start={start} readAgain={askAgain} kept={kept} />
			),
		),
		mixer: ofJob("mixer", (props) => (
			<MixerView {...props} record={() => go("record")} />
		)),
		checks: ofJob("checks", (props) => <ChecksView {...props} />),
		picture: ofJob("picture", (props) => <PictureView {...props} />),
		color: ofJob("color", (props) => <ColorView {...props} />),
		record: ofJob("record", (props) => <RecordView {...props} />),
		functions: (
			<Functions
				ask={ask}
				separator={start?.separator ?? ANYWHERE}
				inSight={shown === "functions"}
			/>
		),
	};
	return (
		<Tabs
			shown={shown}
			show={show}
			views={VIEWS.map(([id, label]) => ({
				id,
				label,
				content: contents[id],
			}))}
		/>
	);
}

/** The chosen job while it is there, else the one whose tab is open, else the newest. */
function jobOf({ jobs, open }: PanelStart, chosen: number): number {
	const there = (job: number) => jobs.some(({ number }) => number === job);
	if (there(chosen)) return chosen;
	return there(open) ? open : (jobs[jobs.length - 1]?.number ?? 0);
}

/** What was kept of an unfinished form; without it the form begins blank. */
function useKept(ask: Ask): string | undefined {
	const [kept, setKept] = useState<string>();
	useEffect(() => {
		ask("keptDraft").then(setKept, () => setKept(""));
	}, [ask]);
	return kept;
}

const NoJob = ({ begin }: { begin(): void }) => (
	<>
		<p class="told">This workbook has no open job.</p>
		<button type="button" class="main" onClick={begin}>
			Start a job
		</button>
	</>
);
