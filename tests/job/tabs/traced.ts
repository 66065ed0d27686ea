/** Numbers of a tab against those of the public functions that their notes name. */
import { expect } from "vitest";
import type { TabAnswer } from "../../../src/job/tabs/tab";

/** The same number, but for the last digits of binary arithmetic. */
export function expectSame(shown: unknown, own: unknown): void {
	expect(typeof shown).toBe("number");
	expect(typeof own).toBe("number");
	expect(Math.abs(Number(shown) - Number(own))).toBeLessThanOrEqual(
		1e-9 * Math.max(1, Math.abs(Number(own))),
	);
}

/** Labels or headings with the public function that they name. */
export const traceable = ({ shown }: TabAnswer): string[] => [
	...new Set(shown.flatMap(({ label, by }) => (by ? [`${label}: ${by}`] : []))),
];
