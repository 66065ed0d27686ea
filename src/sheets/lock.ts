/** One at a time: two people who create a job, or write into one, in the same moment do it one after the other. */
import { InputError } from "../calc/errors";

const WAIT_MS = 20_000;

/**
 * Makes sure that nobody else changes the workbook through the add-on until this call ends, which lets the lock go.
 *
 * @throws InputError when somebody else does for so long.
 */
export function waitForTurn(): void {
	// a script bound to a file has the document's lock; run from elsewhere there is only the script's
	const lock = LockService.getDocumentLock() ?? LockService.getScriptLock();
	if (!lock.tryLock(WAIT_MS))
		throw new InputError(
			"Somebody else is changing a job in this workbook. Wait a moment, then try again.",
		);
}
