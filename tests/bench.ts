/** `npm run bench`: what the built add-on costs, as one table; times are of the processor. */

import { boardRows } from "./bench/boards";
import { builtRows } from "./bench/built";
import { colorRows } from "./bench/colors";
import { demoRows } from "./bench/demo";
import { functionRows } from "./bench/functions";
import { loadRows } from "./bench/load";
import { mixerRows } from "./bench/loads";
import { planRows } from "./bench/plan";
import { asTable } from "./bench/row";
import { stoneRows } from "./bench/stone";

const rows = [
	...loadRows(),
	...(await demoRows()),
	...(await builtRows()),
	...boardRows(),
	...mixerRows(),
	...planRows(),
	...colorRows(),
	...functionRows(),
	...stoneRows(),
];
console.log(asTable(rows));
