/** One at a time: two people who create a job in the same moment get one after the other. */
import { InputError } from "../calc/errors";

const WAIT_MS = 20_000;

/** The answer of `work`, done while nobody else changes the workbook through the add-on. */
export function locked<T>(work: () => T): T {
	// a script bound to a file has the document's lock; run from elsewhere there is only the script's
	const lock = LockService.getDocumentLock() ?? LockService.getScriptLock();
	if (!lock.tryLock(WAIT_MS))
		throw new InputError(
			"Somebody else is creating a job in this workbook. Wait a moment, then try again.",
		);
	try {
		return work();
	} finally {
		release(lock);
	}
}

/** A lock ends with its call anyway, so that failing to let go of it undoes no work. */
function release(lock: GoogleAppsScript.Lock.Lock): void {
	try {
		lock.releaseLock();
	} catch (error) {
		console.warn(error);
	}
}
