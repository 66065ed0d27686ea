/** What the starter studio's mixes hold, against what can be mixed. */
import { expect, test } from "vitest";
import { mixNames } from "../src/job/studiofile";
import { starterStudio } from "../templates/starterstudio";

// 2% by volume is what ECC M45 has, made to be as much as still flows (Lepech and Li, ACI Materials Journal 105(4), 2008; from memory);
// with less than half a percent the fibers carry nothing (common practice, no source).
test.each(["metric", "us"] as const)(
	"the %s starter mixes hold as much fiber as still flows",
	(units) => {
		const studio = starterStudio(units);
		const shares = mixNames(studio).map((name) => {
			const rows = studio.mixes
				.filter(({ mix }) => mix === name)
				.map(({ ingredient, parts, specificGravity }) => ({
					isFiber:
						String(ingredient).startsWith("Fiber") ||
						String(ingredient).startsWith("PVA fiber"),
					volume: Number(parts) / Number(specificGravity),
				}));
			const sum = (of: typeof rows) =>
				of.reduce((total, { volume }) => total + volume, 0);
			return sum(rows.filter(({ isFiber }) => isFiber)) / sum(rows);
		});
		expect(shares.length).toBe(3);
		for (const share of shares) {
			expect(share).toBeGreaterThan(0.005);
			expect(share).toBeLessThanOrEqual(0.0205);
		}
	},
);
