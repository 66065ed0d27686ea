/** What a person sees while a job is written and after. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { JobMade } from "../../sheets/messages";
import type { Failure } from "../failure";
import { Notice } from "../notice";

/** Past this a person wonders whether anything happens at all. */
const LONG_MS = 20000;

export function Busy() {
	const [long, setLong] = useState(false);
	useEffect(() => {
		const timer = setTimeout(() => setLong(true), LONG_MS);
		return () => clearTimeout(timer);
	}, []);
	return (
		<div class="notice plain" role="status">
			<p>
				{long
					? "Still writing; a large job can take a minute."
					: "Writing the job's tabs…"}
			</p>
			<progress aria-label="Writing the job's tabs" />
		</div>
	);
}

const WHETHER_WRITTEN = {
	no: "No job was written. ",
	unknown: "Look whether the job's tabs are there before writing again. ",
	told: "",
} as const;

/** Nothing typed is lost; whether tabs were written is said as far as it is known. */
export const Failed = ({ failure }: { failure: Failure }) => (
	<Notice kind="warning">
		<p class="lines">{failure.text}</p>
		<p>{WHETHER_WRITTEN[failure.outcome]}What you typed is still here.</p>
	</Notice>
);

interface MadeProps {
	made: JobMade;
	next: string;
	goOn(): void;
}

export function Made({ made, next, goOn }: MadeProps) {
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => heading.current?.focus(), []);
	return (
		<section class="made" aria-labelledby="made-heading">
			<h2 id="made-heading" ref={heading} tabIndex={-1}>
				Job {made.number} is written
			</h2>
			<p>Its tabs are in this workbook:</p>
			<ul>
				{made.tabs.map((tab) => (
					<li key={tab}>
						<bdi>{tab}</bdi>
					</li>
				))}
			</ul>
			<button type="button" class="main" onClick={goOn}>
				{next}
			</button>
		</section>
	);
}
