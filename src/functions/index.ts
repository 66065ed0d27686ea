/** Every sheet function: subject by subject, in each by name. */
import * as carrying from "./carrying";
import * as color from "./color";
import * as cure from "./cure";
import type { SheetFunction } from "./declare";
import * as expected from "./expected";
import * as finish from "./finish";
import * as folding from "./folding";
import * as formwork from "./formwork";
import * as handling from "./handling";
import * as headroom from "./headroom";
import * as lengths from "./lengths";
import * as lifting from "./lifting";
import * as loads from "./loads";
import * as mix from "./mix";
import * as mold from "./mold";
import * as money from "./money";
import * as plannumber from "./plannumber";
import * as pulloff from "./pulloff";
import * as recipes from "./recipes";
import * as takeoff from "./takeoff";
import * as tones from "./tones";
import * as water from "./water";
import * as weighing from "./weighing";

export { callFunction } from "./call";
export { callTab } from "./tabs";

export const registry: readonly SheetFunction[] = [
	lengths,
	takeoff,
	mold,
	formwork,
	mix,
	loads,
	tones,
	pulloff,
	weighing,
	headroom,
	plannumber,
	color,
	recipes,
	expected,
	folding,
	water,
	cure,
	lifting,
	handling,
	carrying,
	finish,
	money,
].flatMap((subject) =>
	(Object.values(subject) as SheetFunction[]).sort((a, b) =>
		a.name < b.name ? -1 : 1,
	),
);

export const functionNamed = (name: string): SheetFunction | undefined =>
	registry.find((fn) => fn.name === name);
