/** The formula of a function with what was typed for each argument. */

/** Blank arguments at the end are left out; one in the middle stays blank, which means its default. */
export function formulaText(
	name: string,
	args: readonly string[],
	separator: string,
): string {
	const typed = args.map((arg) => arg.trim());
	while (typed.length > 0 && typed[typed.length - 1] === "") typed.pop();
	return `=${name}(${typed.join(`${separator} `)})`;
}
