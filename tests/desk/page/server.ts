import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../../..");
const URL_LINE = /http:\/\/127\.0\.0\.1:\d+\//;

export interface Started {
	url: string;
	said(): string;
	/** Stops it as Ctrl-C does, and answers its exit code. */
	stop(): Promise<number | null>;
}

function saidUrl(server: ChildProcess): {
	url: Promise<string>;
	said(): string;
} {
	let text = "";
	const url = new Promise<string>((found, failed) => {
		const hear = (chunk: Buffer) => {
			text += chunk;
			const said = URL_LINE.exec(text);
			if (said) found(said[0]);
		};
		server.stdout?.on("data", hear);
		server.stderr?.on("data", hear);
		server.on("exit", () => failed(new Error(`the desk ended: ${text}`)));
	});
	return { url, said: () => text };
}

/** The desk's server as `npm start` runs it, once it has said its address. */
export async function startServer(...args: string[]): Promise<Started> {
	const server = spawn(
		process.execPath,
		["--import", "tsx", "src/desk/serve.ts", ...args],
		{ cwd: ROOT, stdio: ["ignore", "pipe", "pipe"] },
	);
	const { url, said } = saidUrl(server);
	return {
		url: await url,
		said,
		async stop() {
			const ended = once(server, "exit");
			server.kill("SIGINT");
			const [code] = await ended;
			return code;
		},
	};
}
