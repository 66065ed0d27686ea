import type { Sidebar } from "../contract";
import type { Wire } from "../wire";
import { button, element, sentence } from "./elements";
import type { FromPanel, ToPanel } from "./messages";

export interface PanelHost {
	/** Functions of the script that the panel may call. */
	names: readonly string[];
	/** Text of the script that gives the panel's page its `google.script`. */
	runner: string;
	call(name: string, args: Wire[]): Promise<unknown>;
	closed(): void;
	focusGrid(): void;
}

export interface Panel {
	show(page: Sidebar): void;
	close(): void;
}

/** No `allow-same-origin`: the page can touch nothing of the desk's, as on the platform. */
const SANDBOX =
	"allow-scripts allow-forms allow-popups allow-modals allow-downloads";

/** The page with its stand-in first in the head; before the doctype it would switch the page to quirks mode. */
export function withRunner(html: string, { names, runner }: PanelHost): string {
	const script = `<script>(() => {${runner}\nstandIn.installRunner(${JSON.stringify(names)});})()</script>`;
	const head = /<head(\s[^>]*)?>/i;
	return head.test(html)
		? html.replace(head, (tag) => tag + script)
		: html.replace(/^(\s*<!doctype[^>]*>)?/i, (doctype) => doctype + script);
}

function frameOf(page: Sidebar, host: PanelHost): HTMLIFrameElement {
	const frame = document.createElement("iframe");
	frame.setAttribute("sandbox", SANDBOX);
	frame.title = page.title || "Panel";
	frame.srcdoc = withRunner(page.html, host);
	return frame;
}

/** Answers the panel's calls, in no order that it could rely on. */
function callQueue(host: PanelHost) {
	type Call = Extract<FromPanel, { kind: "call" }>;
	const waiting: { call: Call; answer: (message: ToPanel) => void }[] = [];
	const takeAny = () => {
		const index = Math.floor(Math.random() * waiting.length);
		return waiting.splice(index, 1)[0];
	};
	const run = async () => {
		const taken = takeAny();
		if (!taken) return;
		const { id, name, args } = taken.call;
		try {
			const answer = (await host.call(name, args)) as Wire;
			taken.answer({ id, answer });
		} catch (error) {
			taken.answer({ id, error: sentence(error) });
		}
	};
	return (call: Call, answer: (message: ToPanel) => void) => {
		waiting.push({ call, answer });
		// later, so that calls sent together can change places
		setTimeout(run, 0);
	};
}

/** The place beside the grid where the add-on's panel is shown. */
export function openPanelPlace(host: PanelHost): Panel {
	const place = element("panel");
	let frame: HTMLIFrameElement | undefined;
	const enqueue = callQueue(host);
	const close = () => {
		frame?.remove();
		frame = undefined;
		place.hidden = true;
		host.closed();
	};
	window.addEventListener("message", ({ source, data }) => {
		const asking = frame?.contentWindow;
		if (!asking || source !== asking) return;
		const message = data as FromPanel;
		if (message.kind === "close") close();
		if (message.kind === "focus") host.focusGrid();
		if (message.kind === "call")
			enqueue(message, (answer) => asking.postMessage(answer, "*"));
	});
	element("close-panel").replaceWith(button("Close", close));
	return {
		close,
		show(page) {
			frame?.remove();
			frame = frameOf(page, host);
			element("panel-title").textContent = page.title || "Panel";
			element("panel-page").replaceChildren(frame);
			place.hidden = false;
		},
	};
}
