/** Every sheet function, in the order of its subjects. */
import * as card from "./card";
import type { SheetFunction } from "./declare";
import * as lengths from "./lengths";
import * as mix from "./mix";
import * as money from "./money";
import * as takeoff from "./takeoff";
import * as tones from "./tones";

export { callFunction } from "./call";

export const registry: readonly SheetFunction[] = [
	lengths,
	takeoff,
	mix,
	tones,
	card,
	money,
].flatMap((subject) => Object.values(subject) as SheetFunction[]);

export const functionNamed = (name: string): SheetFunction | undefined =>
	registry.find((fn) => fn.name === name);
