/** A name as names are compared: whatever its case, without outer spaces. */
export const nameKey = (name: string): string => name.trim().toLowerCase();

export const sameName = (one: string, other: string): boolean =>
	nameKey(one) === nameKey(other);
