import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { expect, test } from "vitest";
import { PRODUCT } from "../../src/build/bundle";

/** Packages that a bundle of these files would hold. */
async function bundled(...files: string[]): Promise<string[]> {
	const { metafile } = await build({
		entryPoints: files.map((file) => join(PRODUCT.root, file)),
		absWorkingDir: PRODUCT.root,
		bundle: true,
		write: false,
		metafile: true,
		outdir: "out",
		format: "esm",
		treeShaking: true,
	});
	const names = Object.values(metafile.outputs)
		.flatMap(({ inputs }) => Object.entries(inputs))
		.filter(([, { bytesInOutput }]) => bytesInOutput > 0)
		.flatMap(
			([file]) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? [],
		);
	return [...new Set(names)].sort();
}

test("every library inside the built files has its license in NOTICE", async () => {
	const notice = readFileSync(join(PRODUCT.root, "NOTICE"), "utf8");
	const packages = await bundled(
		"src/functions/index.ts",
		"src/sheets/entries.ts",
		"src/sidebar/main.tsx",
	);
	expect(packages).toContain("preact");
	for (const name of packages) {
		const folder = join(PRODUCT.root, "node_modules", name);
		expect(notice).toContain(`\n${name} (in `);
		expect(notice).toContain(
			readFileSync(join(folder, "LICENSE"), "utf8").trim(),
		);
	}
});
