/** `npm run job -- FILE.json [--csv DIR]` */
import { fileURLToPath } from "node:url";
import { runJob } from "./job-run";

process.exitCode = await runJob({
	args: process.argv.slice(2),
	// npm runs a script in the project's folder; file names are the person's
	folder: process.env.INIT_CWD ?? process.cwd(),
	dist: fileURLToPath(new URL("../../dist", import.meta.url)),
	out: (text) => console.log(text),
	err: (text) => console.error(text),
});
