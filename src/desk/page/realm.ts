import type { Realm } from "../contract";

/** The globals of a bare script context; a frame's window loses all others. */
const BARE = new Set(
	`Object Function Array Number parseFloat parseInt Infinity NaN undefined Boolean String Symbol Date Promise
	RegExp Error AggregateError EvalError RangeError ReferenceError SyntaxError TypeError URIError globalThis JSON
	Math Intl ArrayBuffer Uint8Array Int8Array Uint16Array Int16Array Uint32Array Int32Array Float32Array
	Float64Array Uint8ClampedArray BigUint64Array BigInt64Array DataView Map BigInt Set WeakMap WeakSet WeakRef
	FinalizationRegistry Proxy Reflect decodeURI decodeURIComponent encodeURI encodeURIComponent escape unescape
	eval isFinite isNaN console WebAssembly constructor`.split(/\s+/),
);

/** Every object a global can be found on: the window and its prototypes, up to the one all objects have. */
function holders(window: typeof globalThis): object[] {
	const last = window.Object.prototype;
	const chain: object[] = [];
	for (
		let holder: object = window;
		holder !== last;
		holder = Object.getPrototypeOf(holder)
	)
		chain.push(holder);
	return chain;
}

/** Deletes what is not bare; answers the names that cannot be deleted (`window`, `document`, `location`, `top`). */
function strip(window: typeof globalThis): string[] {
	return holders(window).flatMap((holder) =>
		Reflect.ownKeys(holder)
			.filter((key) => typeof key === "string")
			.filter((key) => !BARE.has(key) && !Reflect.deleteProperty(holder, key)),
	);
}

/** A bare script context in the page: the window of a hidden blank frame, stripped. */
export function openPageRealm(): Realm {
	const frame = document.createElement("iframe");
	frame.hidden = true;
	frame.title = "script";
	document.body.append(frame);
	const window = frame.contentWindow as Window & typeof globalThis;
	const stuck = strip(window);
	return {
		// a name that cannot be deleted becomes a parameter nobody passes
		compile: (parameters, body) =>
			window.Function(...parameters, ...stuck, body) as (
				...values: unknown[]
			) => unknown,
		globals: () => window.Object.getOwnPropertyNames(window),
	};
}
