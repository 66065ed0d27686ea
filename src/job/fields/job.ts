import { day, type Row, share, text, whole, word } from "./field";

export const STAGES = [
	"sampling",
	"priced",
	"ordered",
	"molds built",
	"poured",
	"finished",
	"delivered",
] as const;

/** Who a job is for, when, and how far it is. */
export const JOB = {
	client: text("Client", { required: true }),
	title: text("Title", { required: true }),
	pourDate: day("Pour date", { once: true, asks: "Pour date, if known" }),
	dueDate: day("Due date", { once: true }),
	stage: word("Stage", STAGES, { once: true, start: "priced" }),
	waste: share("Waste", {
		help: "Added to every volume; blank: the studio's usual waste.",
	}),
	crew: whole("People to lift, if not all", {
		help: "How many are there for this job; blank: the studio's crew.",
	}),
};

export type JobRow = Row<typeof JOB>;
