/** Every service call of every change fails once, in a workbook of the demo job. */
import { strikeDemo, strikeFirstJob } from "./demoworks";
import { everyCall } from "./strikes";

strikeFirstJob(everyCall, 200);
strikeDemo(everyCall);
