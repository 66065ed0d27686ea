import type { FunctionHelp } from "../../functions/help";

/** Put in by the build. The page needs what the functions say, not how they compute. */
declare const FUNCTION_HELP: FunctionHelp[];

/** What every sheet function says to a person. */
export const functionHelp: readonly FunctionHelp[] = FUNCTION_HELP;
