/** The side panel: what the workbook says at the start, then the views. */
import { useCallback, useEffect, useState } from "preact/hooks";
import type { PanelStart } from "../sheets/messages";
import { type Failure, failureOf } from "./failure";
import { Functions } from "./functions/functions";
import { NewJob } from "./newjob/new-job";
import { Notice } from "./notice";
import type { Ask } from "./script";
import { Tabs } from "./tabs";

/** `;` is read in every file, whatever its locale. */
const ANYWHERE = ";";

export function Panel({ ask }: { ask: Ask }) {
	const [start, setStart] = useState<PanelStart>();
	const [failure, setFailure] = useState<Failure>();
	const read = useCallback(() => {
		setFailure(undefined);
		return ask("panelStart").then(setStart, (error) =>
			setFailure(failureOf(error)),
		);
	}, [ask]);
	useEffect(() => {
		read();
	}, [read]);
	const newJob = (
		<>
			{failure && <StartFailed failure={failure} again={read} />}
			{start && <NewJob ask={ask} start={start} readAgain={read} />}
			{!start && !failure && (
				<Notice kind="plain">Reading this workbook…</Notice>
			)}
		</>
	);
	return (
		<Tabs
			views={[
				{ id: "newjob", label: "New job", content: newJob },
				{
					id: "functions",
					label: "Functions",
					content: (
						<Functions ask={ask} separator={start?.separator ?? ANYWHERE} />
					),
				},
			]}
		/>
	);
}

function StartFailed({
	failure,
	again,
}: {
	failure: Failure;
	again: () => void;
}) {
	return (
		<Notice kind="warning">
			<p>{failure.text}</p>
			<button type="button" onClick={again}>
				Try again
			</button>
		</Notice>
	);
}
