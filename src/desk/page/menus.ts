import type { Menu } from "../contract";
import { button, element } from "./elements";

type Choose = (label: string) => void;

function moveFocus(list: HTMLElement, step: number): void {
	const items = [...list.querySelectorAll("button")];
	const now = items.indexOf(document.activeElement as HTMLButtonElement);
	items[(now + step + items.length) % items.length]?.focus();
}

function menuList(menu: Menu, choose: Choose): HTMLElement {
	const list = document.createElement("div");
	list.className = "menu-list";
	list.setAttribute("role", "menu");
	list.hidden = true;
	for (const { label } of menu.items) {
		const item = button(label, () => choose(label));
		item.classList.add("item");
		item.setAttribute("role", "menuitem");
		item.tabIndex = -1;
		list.append(item);
	}
	return list;
}

/**
 * One menu: a button, and a list that opens below it. Arrow keys move, Escape closes.
 *
 * It closes when a person goes elsewhere. The grid takes the focus by itself, a moment after it is drawn or a tab is
 * opened: an open menu takes it back.
 */
function menuElement(menu: Menu, choose: Choose): HTMLElement {
	const box = document.createElement("div");
	box.className = "menu";
	const opener = button(menu.title, () => show(list.hidden === true));
	opener.classList.add("opener");
	opener.setAttribute("aria-haspopup", "menu");
	const list = menuList(menu, (label) => {
		show(false);
		choose(label);
	});
	const show = (open: boolean) => {
		list.hidden = !open;
		opener.setAttribute("aria-expanded", String(open));
		if (open) list.querySelector("button")?.focus();
	};
	const isOutside = (target: EventTarget | null) =>
		!box.contains(target as Node | null);
	show(false);
	box.append(opener, list);
	box.addEventListener("keydown", (event) => {
		const steps: Record<string, number> = { ArrowDown: 1, ArrowUp: -1 };
		const step = steps[event.key];
		if (event.key === "Escape") {
			show(false);
			opener.focus();
		} else if (step && list.hidden) show(true);
		else if (step) moveFocus(list, step);
		else {
			if (event.key === "Tab") show(false);
			return;
		}
		event.preventDefault();
	});
	box.addEventListener("focusout", ({ target, relatedTarget }) => {
		if (list.hidden || !isOutside(relatedTarget)) return;
		// only then the focus is where it goes
		setTimeout(() => {
			if (list.hidden) return;
			// a press in the panel shows in no other way: its page is another
			if (document.activeElement?.tagName === "IFRAME") show(false);
			else (target as HTMLElement).focus();
		}, 0);
	});
	document.addEventListener(
		"pointerdown",
		({ target }) => {
			if (isOutside(target)) show(false);
		},
		true,
	);
	return box;
}

/** The menus that the add-on has built. */
export function showMenus(menus: readonly Menu[], choose: Choose): void {
	element("menus").replaceChildren(
		...menus.map((menu) => menuElement(menu, choose)),
	);
}
