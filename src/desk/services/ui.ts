/** `SpreadsheetApp.getUi()`: menus, questions to the person, the panel. */
import type { Menu } from "../contract";
import type { Call } from "./call";
import { pageOf } from "./html";

type Ui = GoogleAppsScript.Base.Ui;
type UiMenu = GoogleAppsScript.Base.Menu;
type PromptResponse = GoogleAppsScript.Base.PromptResponse;

const BUTTONS: Readonly<Record<string, readonly string[]>> = {
	OK: ["OK"],
	OK_CANCEL: ["OK", "CANCEL"],
	YES_NO: ["YES", "NO"],
};
const names = (words: readonly string[]) =>
	Object.fromEntries(words.map((word) => [word, word]));

function menuService(call: Call, title: string): UiMenu {
	const menu: Menu = { title, items: [] };
	const methods: Pick<UiMenu, "addItem" | "addToUi"> = {
		addItem(label, run) {
			menu.items.push({ label: String(label), run: String(run) });
			return served;
		},
		addToUi() {
			call.host.menus = [
				...call.host.menus.filter((other) => other.title !== title),
				menu,
			];
		},
	};
	const served: UiMenu = call.serve<UiMenu>("Menu", methods);
	return served;
}

/** `(text)`, `(text, buttons)` or `(title, text, buttons)`. */
function question(args: readonly unknown[]) {
	const texts = args.map(String);
	const last = texts[texts.length - 1] ?? "";
	const buttons = texts.length > 1 ? BUTTONS[last] : undefined;
	const words = buttons ? texts.slice(0, -1) : texts;
	return {
		title: words.length > 1 ? (words[0] ?? "") : "",
		text: words[words.length - 1] ?? "",
		buttons: buttons ?? ["OK"],
	};
}

export function uiService(call: Call): Ui {
	const { host } = call;
	const methods = {
		Button: names(["CLOSE", "OK", "CANCEL", "YES", "NO"]),
		ButtonSet: names(Object.keys(BUTTONS)),
		createAddonMenu: () => menuService(call, host.addOn.name),
		alert: (...args: unknown[]) =>
			host.person.alert?.(question(args)) ?? "CLOSE",
		prompt(...args: unknown[]) {
			const answer = host.person.prompt?.(question(args)) ?? {
				button: "CLOSE",
				text: "",
			};
			return call.serve<PromptResponse>("PromptResponse", {
				getSelectedButton: () => answer.button,
				getResponseText: () => answer.text,
			});
		},
		showSidebar(output: unknown) {
			host.sidebar = pageOf(call, output);
			host.person.sidebar?.(host.sidebar);
		},
	} satisfies Partial<Record<keyof Ui, unknown>>;
	return call.serve<Ui>("Ui", methods);
}
