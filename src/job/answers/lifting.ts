/** Who lifts a piece: the crew, or the lifting equipment. */
import { peopleToLift } from "../../calc/handling";
import { JOB } from "../fields/job";
import { lengthText, plain } from "../reading/cells";
import { fromSi, unitName } from "../reading/units";
import { type Given, setting } from "./given";
import {
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	readField,
} from "./known";

export interface LiftAnswer {
	/** How many people it takes, by what one of them may lift. */
	people: Known<number | "equipment">;
	/** Who lifts it, in words. A look where neither crew nor equipment is enough. */
	by: Known<string>;
}

/** Equipment counts only where the crew is not enough. */
export function liftAnswer(given: Given, massKg: Known<number>): LiftAnswer {
	const people = fromBoth(massKg, setting(given, "one_person"), whoLifts);
	const crew = fromBoth(people, crewOf(given), (who, there) =>
		who !== "equipment" && who <= there ? who : undefined,
	);
	if (!isKnown(crew)) return { people, by: crew };
	if (crew.is !== undefined) return { people, by: crewWords(given, crew.is) };
	const enough = fromBoth(
		massKg,
		setting(given, "equipment"),
		(mass, most) => mass <= most,
	);
	return {
		people,
		by: !isKnown(enough)
			? enough
			: enough.is
				? is("lifting equipment")
				: look(
						"more than the crew and the lifting equipment: more hands, equipment, or two pieces",
					),
	};
}

/** `2 people, 23 kg each at a reach of 300 mm and a height of 750 mm`. */
const crewWords = (given: Given, people: number): Known<string> =>
	from(setting(given, "one_person"), (limitKg) => {
		const who = people === 1 ? "1 person, " : `${people} people, each `;
		const reach = setting(given, "lift_reach");
		const height = setting(given, "lift_height");
		const mass = `up to ${plain(Number(fromSi(limitKg, "mass", given.units).toFixed(1)))} ${unitName("mass", given.units)}`;
		const text = lengthText(given.units);
		return isKnown(reach) && isKnown(height)
			? `${who}${mass} at a reach of ${text(reach.is)} and hands at ${text(height.is)}`
			: `${who}${mass}, reach and height of that lift not typed`;
	});

function whoLifts(massKg: number, limitKg: number): number | "equipment" {
	const people = peopleToLift(massKg, limitKg);
	return people === "lifting equipment" ? "equipment" : people;
}

/** How many are there to lift for this job. */
export function crewOf(given: Given): Known<number> {
	const own = readField(JOB, "crew", given.job, given.units);
	return "missing" in own ? setting(given, "crew") : own;
}
