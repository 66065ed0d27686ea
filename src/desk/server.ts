import { existsSync, readdirSync, readFileSync } from "node:fs";
import {
	createServer,
	type IncomingMessage,
	type ServerResponse,
} from "node:http";
import type { AddressInfo } from "node:net";
import { basename, extname, join } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
	".html": "text/html; charset=utf-8",
	".js": "text/javascript; charset=utf-8",
	".css": "text/css; charset=utf-8",
	".json": "application/json; charset=utf-8",
	".txt": "text/plain; charset=utf-8",
};

/** The browser itself refuses every request to anywhere else, the panel's too. */
const ONLY_HERE =
	"default-src 'self' data: blob: 'unsafe-inline' 'unsafe-eval'; base-uri 'self'; form-action 'self'";

export interface Served {
	/** The folder of the page. */
	page: string;
	/** The folder of the built add-on, handed out as it is. */
	addOn: string;
	/** 0: any free one. */
	port: number;
}

export interface Server {
	url: string;
	close(): Promise<void>;
}

/** The file that a path asks for; only what lies in the two folders. */
function fileFor(path: string, { page, addOn }: Served): string {
	const name = basename(path);
	if (path === "/") return join(page, "page.html");
	return path.startsWith("/add-on/") ? join(addOn, name) : join(page, name);
}

/** Answers a path with a text and its kind, or undefined where there is nothing. */
function answerTo(
	path: string,
	served: Served,
): { type: string; body: Buffer | string } | undefined {
	const type = (name: string) =>
		TYPES[extname(name)] ?? "application/octet-stream";
	if (path === "/add-on.json") {
		const names = existsSync(served.addOn) ? readdirSync(served.addOn) : [];
		return { type: type(path), body: JSON.stringify(names) };
	}
	const file = fileFor(path, served);
	return existsSync(file)
		? { type: type(file), body: readFileSync(file) }
		: undefined;
}

function answer(
	request: IncomingMessage,
	response: ServerResponse,
	served: Served,
): void {
	const { pathname } = new URL(request.url ?? "/", "http://desk");
	const found = answerTo(pathname, served);
	response.writeHead(found ? 200 : 404, {
		"content-type": found?.type ?? "text/plain",
		"content-security-policy": ONLY_HERE,
		"cache-control": "no-cache",
	});
	response.end(found?.body ?? "There is nothing here.");
}

/**
 * Serves the desk to this computer only.
 *
 * @throws Error when the port is taken.
 */
export function openServer(served: Served): Promise<Server> {
	const server = createServer((request, response) =>
		answer(request, response, served),
	);
	return new Promise((opened, failed) => {
		server.once("error", failed);
		server.listen(served.port, "127.0.0.1", () => {
			const { port } = server.address() as AddressInfo;
			opened({
				url: `http://127.0.0.1:${port}/`,
				close: () =>
					new Promise((closed) => {
						server.close(() => closed());
						server.closeAllConnections();
					}),
			});
		});
	});
}
