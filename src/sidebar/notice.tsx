/** Something the person should read: plain, or when it went wrong. */
import type { ComponentChildren } from "preact";
import type { Failure } from "./failure";
import type { Told } from "./use-doing";

interface Props {
	kind: "plain" | "warning";
	children: ComponentChildren;
}

/** A warning is told at once by a screen reader, the rest when it is free. */
export const Notice = ({ kind, children }: Props) => (
	<div class={`notice ${kind}`} role={kind === "warning" ? "alert" : "status"}>
		{children}
	</div>
);

/** What came of something that the script was to do. */
export const Came = ({ told }: { told: Told | undefined }) =>
	told ? (
		<Notice kind={told.kind}>
			<p class="lines">{told.text}</p>
		</Notice>
	) : null;

interface FailedProps {
	failure: Failure;
	again(): void;
}

/** What the script could not give, and another try. */
export const Failed = ({ failure, again }: FailedProps) => (
	<Notice kind="warning">
		<p>{failure.text}</p>
		<button type="button" onClick={again}>
			Try again
		</button>
	</Notice>
);
