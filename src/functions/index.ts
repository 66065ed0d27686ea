/** Every sheet function, in the order of its subjects. */
import type { SheetFunction } from "./declare";
import * as lengths from "./lengths";

export { callFunction } from "./call";

export const registry: readonly SheetFunction[] = [lengths].flatMap(
	(subject) => Object.values(subject) as SheetFunction[],
);

export const functionNamed = (name: string): SheetFunction | undefined =>
	registry.find((fn) => fn.name === name);
