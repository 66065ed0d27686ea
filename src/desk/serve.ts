/** `npm start`: the desk in a browser of this computer. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { bundlePage } from "./page/bundle";
import { openServer } from "./server";

function fail(sentence: string): never {
	console.error(sentence);
	process.exit(1);
}

/** The port that was asked for, 0 for any free one. */
function portAsked(): number {
	try {
		const { values } = parseArgs({ options: { port: { type: "string" } } });
		const port = Number(values.port ?? 0);
		if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
		return fail(`--port takes a number from 1 to 65535, got ${values.port}`);
	} catch (error) {
		return fail(`${(error as Error).message}\nUsage: npm start -- --port 8080`);
	}
}

const port = portAsked();
const page = mkdtempSync(join(tmpdir(), "tonefold-desk-"));
process.on("exit", () => rmSync(page, { recursive: true, force: true }));
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const)
	process.on(signal, () => process.exit(0));

const addOn = join(import.meta.dirname, "../../dist");
const { url } = await openServer({ page, addOn, port }).catch((error) =>
	fail(
		error.code === "EADDRINUSE"
			? `Port ${port} is taken: choose another with --port, or leave it out for a free one.`
			: error.message,
	),
);
await bundlePage(page);
console.log(`Tonefold desk: ${url}\nCtrl-C stops it.`);
