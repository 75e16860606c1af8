import type { ListKind } from "../../../workers/index.ts";

const things = (count: string, isOne: boolean): string => (isOne ? "1 thing" : `${count} things`);

/** The words of saving the stash as a list, in English. Counts come in as printed. */
export const saveWords = {
  /** On the stash itself. */
  onwards: "Take it with you",
  save: "Save the list",
  print: "Print it",

  title: "Save the list",
  lead: "What you have, as a file for a spreadsheet.",
  leadMore:
    "Brought in again, each thing is just as it was when it was saved, and what is here already is left alone.",
  note: "In the language of this page. It is read back in either.",
  kinds: "As a file",
  kind: {
    xlsx: "Save as XLSX",
    ods: "Save as ODS",
    csv: "Save as CSV",
  } satisfies Readonly<Record<ListKind, string>>,
  kindText: {
    xlsx: "what most spreadsheets open; prices are numbers, and days are days",
    ods: "the same in the open format of office programs",
    csv: "plain text that any program reads; some take a code such as 007 for the number 7",
  } satisfies Readonly<Record<ListKind, string>>,
  nothing: "There is nothing to save",
  writing: "Writing the list",
  saved: (name: string, count: string, isOne: boolean) => `Saved ${name}: ${things(count, isOne)}.`,
  failed: "The list could not be written: this device has too little memory. Save a part of it.",

  held: "What is in it",
  looking: "Looking at what is in it",
  whole: "Everything that is noted about these things.",
  pictures: (count: string, isOne: boolean) =>
    isOne ? "The pictures of 1 thing are not in it." : `The pictures of ${count} things are not in it.`,
  others: (count: string, isOne: boolean) =>
    isOne
      ? "1 thing has something noted that no column holds."
      : `${count} things have something noted that no column holds.`,
  copy: "A copy of everything has it all.",
  toCopy: "Save a copy of everything",

  paper: "On paper",

  /** In Keep safe. */
  apart: "The stash as a list",
  apartText: "A file for a spreadsheet, or a sheet to check the shelf by. It comes back in as it went out.",

  fileName: (day: string, kind: ListKind) => `stash-${day}.${kind}`,
  sheet: "Stash",
};
