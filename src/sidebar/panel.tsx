/** The side panel: what the workbook says at the start, then the views. */
import { Functions } from "./functions/functions";
import { NewJob } from "./newjob/new-job";
import { Failed, Notice } from "./notice";
import type { Ask } from "./script";
import { Tabs } from "./tabs";
import { useAnswer } from "./use-answer";

/** `;` is read in every file, whatever its locale. */
const ANYWHERE = ";";

export function Panel({ ask }: { ask: Ask }) {
	const { answer: start, failure, askAgain } = useAnswer(ask, "panelStart");
	const newJob = (
		<>
			{failure && <Failed failure={failure} again={askAgain} />}
			{start && <NewJob ask={ask} start={start} readAgain={askAgain} />}
			{!start && !failure && (
				<Notice kind="plain">Reading this workbook…</Notice>
			)}
		</>
	);
	const functions = (
		<Functions ask={ask} separator={start?.separator ?? ANYWHERE} />
	);
	return (
		<Tabs
			views={[
				{ id: "newjob", label: "New job", content: newJob },
				{ id: "functions", label: "Functions", content: functions },
			]}
		/>
	);
}
