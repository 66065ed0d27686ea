/** What is wrong at a field or a row, and when it is shown. */
import { createContext } from "preact";
import { useContext } from "preact/hooks";

/** What the fields below know of mistakes. */
export interface Marks {
	/** The sentence to show at a field; undefined while it is fine or still being typed. */
	at(id: string): string | undefined;
	/** The person has left the field. */
	left(id: string): void;
}

export const MarksContext = createContext<Marks>({
	at: () => undefined,
	left: () => {},
});

/** The sentence at a field. */
export function Mistake({ id }: { id: string }) {
	const sentence = useContext(MarksContext).at(id);
	return sentence ? (
		<p class="mistake" id={`${id}-mistake`}>
			{sentence}
		</p>
	) : null;
}

/** The sentence at a row as a whole; it can be gone to, since no field can. */
export function RowMistake({ id }: { id: string }) {
	const sentence = useContext(MarksContext).at(id);
	return sentence ? (
		<p class="mistake" id={id} tabIndex={-1}>
			{sentence}
		</p>
	) : null;
}
