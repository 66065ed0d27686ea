import type { FunctionHelp } from "../../functions/help";
import { type HelpTables, helpFrom } from "../../functions/helptables";

/** Put in by the build. The page needs what the functions say, not how they compute. */
declare const FUNCTION_HELP: HelpTables;

/** What every sheet function says to a person. */
export const functionHelp: readonly FunctionHelp[] = helpFrom(FUNCTION_HELP);
