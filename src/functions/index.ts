/** Every sheet function, in the order of its subjects. */
import type { SheetFunction } from "./declare";
import * as lengths from "./lengths";
import * as mix from "./mix";
import * as money from "./money";
import * as takeoff from "./takeoff";

export { callFunction } from "./call";

export const registry: readonly SheetFunction[] = [
	lengths,
	takeoff,
	mix,
	money,
].flatMap((subject) => Object.values(subject) as SheetFunction[]);

export const functionNamed = (name: string): SheetFunction | undefined =>
	registry.find((fn) => fn.name === name);
