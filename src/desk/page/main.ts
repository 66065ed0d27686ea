/** The desk in the browser: a workbook with the add-on in it, its menu and its panel. */
import type { AddOn, Desk } from "../contract";
import { openDesk } from "../desk";
import { isPublic, readScript } from "../script";
import { fetchAddOn, fetchRunner } from "./addon";
import { keepLineBelow } from "./below";
import { showSpilledBlanks } from "./blanks";
import { coverFails, coverSays, uncover } from "./cover";
import { showDrawings } from "./drawings";
import { element, sentence } from "./elements";
import { startPageEngine } from "./engine";
import { readHelp } from "./help";
import { showMenus } from "./menus";
import { openPanelPlace, type Panel } from "./panel";
import { personAtPage, showMessage } from "./person";
import { keepPicturesShown } from "./pictures";
import { printTab } from "./print";
import { openPageRealm } from "./realm";
import { keepRowsFitted } from "./rows";
import "./page.css";

const asked = new URLSearchParams(location.search);
const isNarrow = () => window.matchMedia("(max-width: 699px)").matches;

/** The desk stands here for whoever wants to look into the workbook by hand. */
declare global {
	interface Window {
		desk?: Desk;
	}
}

function publicNames({ code }: AddOn): string[] {
	const script = readScript(code);
	return script.names.filter((name) => isPublic(script, name));
}

async function openEverything(): Promise<{ desk: Desk; panel: Panel }> {
	const [addOn, runner] = await Promise.all([fetchAddOn(), fetchRunner()]);
	await coverSays("Opening the workbook …");
	const realm = openPageRealm();
	const help = readHelp(addOn.code);
	const panel = openPanelPlace({
		names: publicNames(addOn),
		runner,
		call: (name, args) => desk.call(name, args),
		closed: () => desk.closeSidebar(),
		focusGrid: () => element("grid").focus(),
	});
	const desk = await openDesk({
		addOn,
		startEngine: (functions) =>
			startPageEngine(functions, { container: "grid", help }),
		// every call evaluates the whole script anew, so one bare context is enough
		openRealm: () => realm,
		person: personAtPage((page) => panel.show(page)),
		enabled: !asked.has("empty"),
	});
	desk.keepSettled();
	return { desk, panel };
}

function choose(desk: Desk): (label: string) => Promise<void> {
	return async (label) => {
		document.body.classList.add("busy");
		try {
			await desk.choose(label);
		} catch (error) {
			showMessage(sentence(error), label, true);
		} finally {
			document.body.classList.remove("busy");
		}
	};
}

async function openPanel(desk: Desk): Promise<void> {
	const item = desk
		.menus()
		.flatMap(({ items }) => items)
		.find(({ run }) => run === "openThePanel");
	if (item) await choose(desk)(item.label);
}

function startOver(): void {
	if (window.confirm("Start over? Everything typed in this workbook goes."))
		location.reload();
}

async function start(): Promise<void> {
	const { desk } = await openEverything();
	showSpilledBlanks(desk.engine);
	showDrawings(desk.engine);
	if (!asked.has("empty")) {
		await coverSays("Writing the demo job …");
		await desk.call("createDemoJob", [
			asked.get("units") === "us" ? "us" : "metric",
		]);
		if (!isNarrow()) await openPanel(desk);
	}
	showMenus(desk.menus(), choose(desk));
	keepRowsFitted(desk);
	keepPicturesShown(desk);
	keepLineBelow(desk);
	for (const [id, click] of [
		["print-tab", () => printTab(desk)],
		["start-over", startOver],
	] as const) {
		element(id).addEventListener("click", click);
		element<HTMLButtonElement>(id).disabled = false;
	}
	uncover();
	window.desk = desk;
}

start().catch((error) => {
	console.error(error);
	coverFails("The workbook could not be opened", sentence(error));
});
