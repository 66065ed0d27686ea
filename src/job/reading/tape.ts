/** Lengths as whoever builds the mold reads them. */
import { plain } from "./cells";
import { fromSi, type UnitSystem } from "./units";

/** A length as a tape reads it: millimeters, or inches with a fraction where they are whole sixteenths. */
export function onTape(lengthM: number, units: UnitSystem): string {
	const value = fromSi(lengthM, "length", units);
	const sixteenths = Math.round(value * 16);
	if (units === "metric" || Math.abs(value * 16 - sixteenths) > 1e-6)
		return plain(Number(value.toFixed(2)));
	const inches = Math.floor(sixteenths / 16);
	const fraction = reduced(sixteenths % 16, 16);
	return [inches > 0 || fraction === "" ? inches : "", fraction]
		.filter((part) => part !== "")
		.join(" ");
}

function reduced(over: number, under: number): string {
	if (over === 0) return "";
	return over % 2 === 0 ? reduced(over / 2, under / 2) : `${over}/${under}`;
}
