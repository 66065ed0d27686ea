/** How long the pieces stay in the mold: not before they bear it, and not so long that they shrink onto what the mold holds. */
import { daysBetween } from "../../../calc/calendar";
import { hoursAt } from "../../../calc/cure";
import type { CureDays } from "../../../calc/curedays";
import { isHollow } from "../../../calc/takeoff";
import { plain } from "../../reading/cells";
import { fromSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, setting } from "../given";
import { all, flat, from, fromBoth, is, type Known, look } from "../known";
import { overPieces } from "../loads";
import { logOf, Q_K, REFERENCE_C } from "./strengthlog";

/** Fine where every piece that the mold holds inside is out in time. */
export const moldTimeOf = (
	{ given, pieces }: Pick<Basis, "given" | "pieces">,
	days: Known<CureDays>,
): Known<string> =>
	flat(
		from(
			overPieces(given, pieces, ({ piece, cutouts }) =>
				fromBoth(piece, cutouts, (one, own) => ({
					name: one.name,
					isHeld:
						own.length > 0 ||
						one.dropHeightM !== undefined ||
						isHollow(one) ||
						one.shape === "L" ||
						one.shape === "U",
				})),
			),
			(each): Known<string> => {
				const held = each.find(({ isHeld }) => isHeld);
				if (held === undefined) return is("fine");
				return flat(
					from(
						all<[CureDays, number]>([
							days,
							setting(given, "longest_mold_hours"),
						]),
						([{ pour, demold }, most]) => {
							const hours = 24 * daysBetween(pour, demold);
							return hours <= most
								? is("fine")
								: look(
										`${hours} h in the mold: from ${plain(most)} h on ${held.name} shrinks onto its knockouts, cores and inner walls, and may crack: loosen them, or demold sooner`,
									);
						},
					),
				);
			},
		),
	);

/** By the log: whether it is as old as it would be after the hours to demolding at 20 °C. */
export function oldEnoughOf(
	given: Given,
	equivalentHours: Known<number>,
): Known<string> {
	const last = from(
		logOf(given),
		(rows) => rows[rows.length - 1]?.temperatureC ?? REFERENCE_C,
	);
	return flat(
		from(
			all<[number, number, number]>([
				equivalentHours,
				setting(given, "demold_hours"),
				last,
			]),
			([hours, wanted, temperatureC]) =>
				hours >= wanted
					? is("by the log, yes: test the piece first")
					: look(
							`not yet: about ${roundedHours(wanted - hours, temperatureC)} h more at ${degrees(given, temperatureC)}`,
						),
		),
	);
}

const roundedHours = (hours: number, temperatureC: number): string =>
	plain(Math.ceil(hoursAt(hours, temperatureC, REFERENCE_C, Q_K)));

const degrees = ({ units }: Given, temperatureC: number): string =>
	`${plain(Number(fromSi(temperatureC, "temperature", units).toFixed(1)))} ${unitName("temperature", units)}`;

/** The hours to demolding when it is colder or warmer: `about 37 h at 10 °C, 12 h at 30 °C`. */
export const otherHours = (given: Given, hours: number): string =>
	[10, 30]
		.map(
			(temperatureC) =>
				`${roundedHours(hours, temperatureC)} h at ${degrees(given, temperatureC)}`,
		)
		.join(", ");
