/** `npm run pictures`: the README's pictures, and every tab and part of the panel in `artifacts`, from the running desk. */
import { join } from "node:path";
import { startServer } from "./desk/page/server";
import { openBrowser } from "./desk/page/visit";
import { keepAll } from "./pictures/all";
import { keepReadmePictures } from "./pictures/readme-pictures";

const browser = await openBrowser();
const server = await startServer();
try {
	await keepReadmePictures(browser, server.url);
	await keepAll(
		browser,
		server.url,
		join(import.meta.dirname, "../artifacts/pictures"),
	);
} finally {
	await browser.close();
	await server.stop();
}
