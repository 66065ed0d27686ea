import { join, relative } from "node:path";
import { build } from "esbuild";
import { written } from "../architecture/files";

const ROOT = join(import.meta.dirname, "../..");

/** Test files that drive a browser, through whatever they import. */
export async function browserTests(): Promise<string[]> {
	const files = written()
		.map(({ file }) => file)
		.filter((file) => /^tests\/.*\.test\.tsx?$/.test(file));
	const { metafile } = await build({
		absWorkingDir: ROOT,
		entryPoints: files,
		bundle: true,
		packages: "external",
		platform: "node",
		format: "esm",
		write: false,
		metafile: true,
		outdir: "unused",
		loader: { ".css": "empty", ".html": "empty" },
	});
	return Object.values(metafile.outputs)
		.filter(({ imports }) =>
			imports.some(({ path }) => path === "playwright-core"),
		)
		.map(({ entryPoint = "" }) => relative(ROOT, join(ROOT, entryPoint)))
		.sort();
}
