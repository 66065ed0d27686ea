/** Of each method that a change calls, the first and the last call fail, in a workbook of the demo job. */
import { strikeDemo, strikeFirstJob } from "./demoworks";
import { eachKind } from "./strikes";
import { WORKS } from "./works";

strikeFirstJob(eachKind, 60);

// creating a job beside another calls what copying calls
strikeDemo(eachKind, WORKS.slice(1));
