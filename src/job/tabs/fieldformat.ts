import type { Field } from "../fields/field";
import type { Format } from "./tab";

/** How a field's cell shows what is typed. */
export function formatOf({ kind, unit, limits }: Field): Format {
	switch (kind) {
		case "day":
			return "date";
		case "share":
			return "share";
		case "money":
			return "money";
		case "weight":
			return "weighed";
		case "number":
			if (limits?.whole) return "whole";
			return unit === "mass" || unit === "pigment" || unit === "temperature"
				? unit
				: "number";
		default:
			return "text";
	}
}
