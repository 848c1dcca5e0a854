/**
 * The words of a log's headings, as data. What is seen and measured (the things) stands in `columns.ts`; here stand the
 * words beside them. Each group says why its words are in it; within a group they are sorted. A word that stands nowhere
 * is a question for the user. Another language is a second table, `Language`, that says these words in its own.
 */
export type { Group } from "../../reading/words/group";
export * from "./beside";
export type { Language } from "./language";
export * from "./office";
export * from "./results";
export * from "./states";
