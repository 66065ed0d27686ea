/** Sum of numbers, in their unit. */
export const sum = (numbers: readonly number[]): number =>
	numbers.reduce((total, each) => total + each, 0);
