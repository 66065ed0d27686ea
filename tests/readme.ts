/** `npm run readme`: writes the generated tables into README.md. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readmeWithTables } from "./readme/tables";

const file = join(import.meta.dirname, "../README.md");
writeFileSync(file, await readmeWithTables(readFileSync(file, "utf8")));
