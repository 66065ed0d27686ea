/** What follows from what, and in which order. */
import type { Item } from "./items";

export interface Order {
	/** What depends on others stands before them: the engine takes from the end. */
	list: Item[];
	/** Items that lead back to themselves. */
	circular: Set<Item>;
}

/** All that depends on some items, themselves too. */
export function downstream(
	from: Iterable<Item>,
	dependents: (item: Item) => readonly Item[],
): Set<Item> {
	const found = new Set(from);
	for (const item of found)
		for (const dependent of dependents(item)) found.add(dependent);
	return found;
}

/** Items ordered, dependents first. Without recursion: a chain may have a thousand links. */
export function ordered(
	items: ReadonlySet<Item>,
	dependents: (item: Item) => readonly Item[],
): Order {
	const list: Item[] = [];
	const done = new Set<Item>();
	const open = new Set<Item>();
	const circular = new Set<Item>();
	for (const start of items) {
		const stack = [start];
		while (stack.length > 0) {
			const item = stack[stack.length - 1] as Item;
			if (done.has(item)) stack.pop();
			else if (open.has(item)) {
				open.delete(item);
				done.add(item);
				list.push(item);
				stack.pop();
			} else {
				open.add(item);
				for (const next of dependents(item)) {
					if (open.has(next)) circular.add(next);
					else if (!done.has(next) && items.has(next)) stack.push(next);
				}
			}
		}
	}
	return { list, circular };
}
