import { render } from "preact";
import type { JobState } from "../../../src/sheets/messages";
import { Picture } from "../../../src/sidebar/picture/picture";
import "../../../src/sidebar/panel.css";

/** The picture alone in a page, of the job that the page was given. */
const given = window as unknown as { state: JobState; put: string[] };
given.put = [];
const place = document.getElementById("panel");
if (place)
	render(
		<main>
			<h1>Picture</h1>
			<Picture
				state={given.state}
				separator=","
				put={(png) => given.put.push(png)}
			/>
		</main>,
		place,
	);
