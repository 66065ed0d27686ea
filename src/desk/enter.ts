/** Runs entry points: each in its own context, with its own services, from the first line of the script on. */
import { messageOf } from "./bridge";
import type { CallOptions, Mode, Realm } from "./contract";
import { type Limits, within } from "./limits";
import { loadScript, type Run, type Script } from "./script";
import { type Call, type Host, startCall } from "./services/call";
import { SERVICES, servicesOf } from "./services/services";
import { sheetService } from "./services/sheet";
import { sentAnswer, type Wire } from "./wire";

export interface Entrance {
	host: Host;
	script: Script;
	openRealm: () => Realm;
	limits: Limits;
	/** Told of every call, also of one that throws. */
	ended(call: Call): void;
	/** The context of quick calls, once there was one. */
	kept?: Loaded;
}

/** A context with the script compiled in it. */
interface Loaded {
	realm: Realm;
	run: Run;
}

function loaded(entrance: Entrance): Loaded {
	const realm = entrance.openRealm();
	return { realm, run: loadScript(entrance.script, realm, SERVICES) };
}

const KILLED = "Exceeded maximum execution time";

const FAULT = "Service Spreadsheets failed while accessing document.";

/**
 * One call of a top-level function, from start to end without a break.
 *
 * @throws Error with the script's own sentence.
 */
export function enter(
	entrance: Entrance,
	name: string,
	args: readonly unknown[],
	options: CallOptions = {},
): Wire {
	const { host } = entrance;
	const mode: Mode = options.mode ?? "FULL";
	if (options.quick) entrance.kept ??= loaded(entrance);
	const { realm, run } =
		(options.quick ? entrance.kept : undefined) ?? loaded(entrance);
	const other = {
		call: (otherName: string, otherArgs: unknown[] = []) =>
			enter(entrance, otherName, otherArgs),
	};
	let killed = false;
	const call = startCall({
		host,
		mode,
		realm,
		sheetOf: sheetService,
		loading: options.loading ?? false,
		before(count) {
			if (count === options.otherAt) options.other?.(other);
			if (count >= (options.killAt ?? Infinity)) {
				killed = true;
				throw new Error(KILLED);
			}
			if (count === options.failAt) throw new Error(FAULT);
		},
	});
	try {
		const { triggerMs, callMs } = entrance.limits;
		const answer = within(mode === "FULL" ? callMs : triggerMs, () =>
			run(name, args, servicesOf(call)),
		);
		if (killed) throw new Error(KILLED);
		return sentAnswer(answer);
	} catch (error) {
		throw new Error(messageOf(error));
	} finally {
		if (host.lockedBy === call) host.lockedBy = undefined;
		entrance.ended(call);
	}
}
