import type { Person, Question } from "../contract";
import { button, element } from "./elements";

const WORDS: Readonly<Record<string, string>> = {
	OK: "OK",
	CANCEL: "Cancel",
	YES: "Yes",
	NO: "No",
};

const MESSAGE_MS = 8_000;

function asked({ title, text }: Question): string {
	return title ? `${title}\n\n${text}` : text;
}

/** What the browser's OK and Cancel stand for, where the script names its buttons otherwise. */
function meaning([ok = "OK", cancel = "CANCEL"]: readonly string[]): string {
	return ok === "OK"
		? ""
		: `\n\nOK is ${WORDS[ok]}, Cancel is ${WORDS[cancel]}.`;
}

/** The button pressed. The script waits for it, so only the browser's own dialogs will do. */
function alerted(question: Question): string {
	const [first = "OK", second] = question.buttons;
	if (second === undefined) {
		window.alert(asked(question));
		return first;
	}
	return window.confirm(asked(question) + meaning(question.buttons))
		? first
		: second;
}

function prompted(question: Question): { button: string; text: string } {
	const text = window.prompt(asked(question));
	const [ok = "OK", cancel = "CLOSE"] = question.buttons;
	return text === null ? { button: cancel, text: "" } : { button: ok, text };
}

/** A message that goes by itself; one of a failure stays until it is closed. */
export function showMessage(text: string, title = "", failed = false): void {
	const box = document.createElement("div");
	box.className = failed ? "toast failed" : "toast";
	const heading = document.createElement("strong");
	heading.textContent = title;
	const words = document.createElement("p");
	words.textContent = text;
	const close = button("Close", () => box.remove());
	box.append(...(title ? [heading] : []), words, close);
	element("toasts").append(box);
	if (!failed) setTimeout(() => box.remove(), MESSAGE_MS);
}

/** The person in front of the page. */
export function personAtPage(sidebar: Person["sidebar"]): Person {
	return {
		alert: alerted,
		prompt: prompted,
		sidebar,
	};
}
