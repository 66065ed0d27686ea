export type * from "./contract";
