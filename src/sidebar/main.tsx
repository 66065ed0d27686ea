import "./panel.css";
import { render } from "preact";
import { Panel } from "./panel";
import { askScript } from "./script";

const place = document.getElementById("panel");
if (place) {
	const { view = "", job } = place.dataset;
	const opening = { view, job: Number(job ?? 0) };
	render(<Panel ask={askScript} opening={opening} />, place);
}
