import {
	day,
	length,
	money,
	number,
	type Row,
	share,
	temperature,
	text,
	whole,
} from "./field";

/** What one poured load was, in the Pour log. */
export const LOGGED = {
	date: day("Date"),
	job: whole("Job"),
	heading: text("Client and title"),
	load: whole("Load"),
	mix: text("Mix"),
	tones: text("Tones and doses reached"),
	spread: length("Spread, {length}"),
	mixTemperature: temperature("Mix, {temperature}"),
	airTemperature: temperature("Air, {temperature}"),
	offTarget: share("Most off target", {}, { max: 100 }),
	minutes: number("Minutes since the load before"),
	weighedBy: text("Weighed by"),
	lots: text("Lots"),
	remarks: text("Remarks"),
	result: text("Result"),
	cost: money("Cost"),
	estimate: money("Estimate"),
};

export type LoggedRow = Row<typeof LOGGED>;
