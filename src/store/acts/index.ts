/**
 * Acts: what a person can do to the book, each as a name and the changes it comes to. Pure; `perform` does them.
 * Paths name parts of lists by what they are, so that edits of two devices to one record can both stand.
 */
export * from "./book.ts";
export * from "./kits.ts";
export * from "./lines.ts";
export * from "./markets.ts";
export * from "./merge.ts";
export { addItemPhoto, removeItemPhoto } from "./photos.ts";
export * from "./remakes.ts";
export * from "./removed.ts";
export * from "./sample.ts";
export * from "./stash.ts";
export * from "./told.ts";
