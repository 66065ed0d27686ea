import "./panel.css";
import { render } from "preact";
import { Panel } from "./panel";
import { askScript } from "./script";

/** Shows the panel, at the view that the page's end names where it does. */
function start(): void {
	const place = document.getElementById("panel");
	if (!place) return;
	const { view = "", job } = document.getElementById("opening")?.dataset ?? {};
	const opening = { view, job: Number(job ?? 0) };
	render(<Panel ask={askScript} opening={opening} />, place);
}

if (document.readyState === "loading")
	document.addEventListener("DOMContentLoaded", start);
else start();
