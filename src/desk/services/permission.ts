/**
 * What an authorization mode allows.
 *
 * @source developers.google.com/workspace/add-ons/concepts/editor-auth-lifecycle (table of modes)
 */
import type { Mode } from "../contract";

/** Allowed before the person has allowed anything: building the menu, and what belongs to nobody. */
const FREE =
	/^(?:SpreadsheetApp\.getUi|Ui\.createAddonMenu|Menu\.|Utilities\.)/;
/** The interface beyond menus needs a person who has asked for it. */
const ASKED = /^Ui\.(?:alert|prompt|showSidebar)$/;

/** Why the mode forbids the service call, or undefined where it does not. */
export function permissionProblem(
	mode: Mode,
	name: string,
): string | undefined {
	const allowed =
		mode === "FULL" ||
		FREE.test(name) ||
		(mode === "LIMITED" && !ASKED.test(name));
	return allowed ? undefined : `You do not have permission to call ${name}.`;
}
