/** What the panel's page and the desk send each other. */
import type { Wire } from "../wire";

export type FromPanel =
	| { kind: "call"; id: number; name: string; args: Wire[] }
	| { kind: "close" }
	| { kind: "focus" };

export type ToPanel = { id: number } & ({ answer: Wire } | { error: string });
