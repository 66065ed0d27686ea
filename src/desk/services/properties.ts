/** `PropertiesService` and `LockService`. */
import { type Call, signature } from "./call";

type Properties = GoogleAppsScript.Properties.Properties;
type Lock = GoogleAppsScript.Lock.Lock;
type PropertyMethods = Pick<
	Properties,
	| "deleteProperty"
	| "getKeys"
	| "getProperties"
	| "getProperty"
	| "setProperties"
	| "setProperty"
>;

const LARGEST_VALUE = 9 * 1024;

function propertiesService(call: Call, store: Map<string, string>): Properties {
	const set = (key: unknown, value: unknown) => {
		if (typeof key !== "string" || typeof value !== "string")
			throw signature([key, value], "PropertiesService.Properties.setProperty");
		if (value.length > LARGEST_VALUE)
			throw new Error("Argument too large: value");
		store.set(key, value);
		return served;
	};
	const methods: PropertyMethods = {
		getProperty: (key) => store.get(key) ?? null,
		getProperties: () => Object.fromEntries(store),
		getKeys: () => [...store.keys()],
		setProperty: set,
		setProperties(values: Readonly<Record<string, unknown>>) {
			for (const [key, value] of Object.entries(values)) set(key, value);
			return served;
		},
		deleteProperty(key) {
			store.delete(key);
			return served;
		},
	};
	const served: Properties = call.serve<Properties>("Properties", methods);
	return served;
}

export function propertiesServices(call: Call): object {
	return call.serve("PropertiesService", {
		getDocumentProperties: () =>
			call.host.bound
				? propertiesService(call, call.host.documentProperties)
				: null,
		getUserProperties: () => propertiesService(call, call.host.userProperties),
	});
}

const LOCKED =
	"Lock timeout: another process was holding the lock for too long.";

/** The one lock of the document; a call that ends lets it go. */
export function lockService(call: Call): object {
	const { host } = call;
	const take = () => {
		host.lockedBy ??= call;
		return host.lockedBy === call;
	};
	const methods: Pick<
		Lock,
		"hasLock" | "releaseLock" | "tryLock" | "waitLock"
	> = {
		tryLock: take,
		waitLock() {
			if (!take()) throw new Error(LOCKED);
		},
		hasLock: () => host.lockedBy === call,
		releaseLock() {
			if (host.lockedBy === call) host.lockedBy = undefined;
		},
	};
	return call.serve("LockService", {
		getDocumentLock: () => call.serve<Lock>("Lock", methods),
	});
}
