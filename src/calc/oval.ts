/** The ellipse, by its two diameters. */

/** Perimeter of an ellipse with these diameters, m: Ramanujan's second formula (1914), within 10⁻⁴ for a 1:10 oval. */
export function ovalEdgeM(aM: number, bM: number): number {
	const h = ((aM - bM) / (aM + bM)) ** 2;
	return (
		((Math.PI * (aM + bM)) / 2) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
	);
}

export const ovalAreaM2 = (aM: number, bM: number): number =>
	(Math.PI * aM * bM) / 4;
