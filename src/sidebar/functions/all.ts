import { type FunctionHelp, helpOf } from "../../functions/help";
import { registry } from "../../functions/index";

/** What every sheet function says to a person. */
export const functionHelp: readonly FunctionHelp[] = registry.map(helpOf);
