import { join } from "node:path";
import { build } from "esbuild";
import { helpOf } from "../functions/help";
import { tablesOf } from "../functions/helptables";
import { registry } from "../functions/index";
import { onlyWhatIsCalled } from "./declared";
import { carriedTemplates } from "./packed";
import { selfUnpacking } from "./selfunpacking";

const ENTRY = join(import.meta.dirname, "../sidebar/main.tsx");

/**
 * One page with the panel's script and style inside, since Apps Script serves no other files.
 *
 * The page also carries the workbook's templates for the script. What the functions say to a person is put in as data:
 * the script would have to carry it through every cell's call.
 */
export async function bundlePanel(entry = ENTRY): Promise<string> {
	const result = await build({
		entryPoints: [entry],
		bundle: true,
		write: false,
		outdir: "panel",
		format: "iife",
		platform: "browser",
		target: "es2020",
		charset: "utf8",
		legalComments: "none",
		minify: true,
		define: { FUNCTION_HELP: JSON.stringify(tablesOf(registry.map(helpOf))) },
		plugins: [onlyWhatIsCalled],
	});
	const text = (extension: string): string =>
		result.outputFiles.find(({ path }) => path.endsWith(extension))?.text ?? "";
	const script = styled(text(".css").trim(), text(".js").trim());
	return page(await selfUnpacking(script), await carriedTemplates());
}

/** The style goes into the script, where it is packed too. */
const styled = (style: string, script: string): string =>
	`document.head.append(Object.assign(document.createElement("style"),{textContent:${JSON.stringify(style)}}));${script}`;

const page = (script: string, templates: string): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<base target="_top">
<title>Tonefold</title>
</head>
<body>
<div id="panel"></div>
<script>${script}</script>
${templates}
</body>
</html>
`;
