/** Something the person should read: plain, or when it went wrong. */
import type { ComponentChildren } from "preact";

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
