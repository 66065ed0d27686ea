/** `npm run build`: makes `dist/`, the files that go to Google, once they pass the gates. */
import {
	mkdirSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { registry } from "../functions/index";
import { tabAnswers } from "../job/tabs/index";
import { bundleCode, bundleTemplates, PRODUCT } from "./bundle";
import { complaints, type Dist, kilobytes } from "./gates";
import { bundlePanel } from "./panel";

const [code, templates, panel] = await Promise.all([
	bundleCode(registry),
	bundleTemplates(),
	bundlePanel(),
]);
const dist: Dist = {
	"Code.js": code,
	"Templates.js": templates,
	"Panel.html": panel,
	"appsscript.json": readFileSync(
		join(PRODUCT.root, "appsscript.json"),
		"utf8",
	),
};

const found = complaints(
	dist,
	[...registry, ...tabAnswers].map(({ name }) => name),
);
if (found.length) {
	console.error(
		`dist/ is not made:\n${found.map((line) => `  ${line}`).join("\n")}`,
	);
	process.exit(1);
}

const folder = join(PRODUCT.root, "dist");
mkdirSync(folder, { recursive: true });
for (const stranger of readdirSync(folder).filter((file) => !(file in dist)))
	rmSync(join(folder, stranger), { recursive: true });
for (const [file, text] of Object.entries(dist)) {
	writeFileSync(join(folder, file), text);
	console.log(`dist/${file}  ${kilobytes(text).toFixed(1)} kB`);
}
