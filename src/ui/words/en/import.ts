import type { Field } from "../../../engine/intake/index.ts";
import type { Delimiter, FileFault } from "../../../workers/index.ts";
import { listed } from "./say.ts";

const rows = (count: string, isOne: boolean): string => (isOne ? "1 row" : `${count} rows`);
const things = (count: string, isOne: boolean): string => (isOne ? "1 thing" : `${count} things`);

type Text = Readonly<{ problem: string; remedy: string }>;

/** The words of bringing in a list, in English. Counts come in as printed. */
export const importWords = {
  title: "Bring in a list",
  lead: "A spreadsheet of yours becomes things in the stash.",
  leadMore: "You see how each row is understood before any of it is added, and one undo takes it all back.",
  note: "The file stays on this device.",

  pick: "Choose a file",
  pickAnother: "Choose another file",
  kinds: "A spreadsheet (XLSX, ODS, CSV, TSV), a list as text, or somebody’s notebook.",
  paste: "Or paste it here",
  pasteHint: "cells copied from a spreadsheet, or one thing a line",
  read: "Read it",
  readNotYet: "Paste something first",
  pastedName: "what you pasted",

  opening: (name: string) => `Opening ${name}`,
  reading: (name: string) => `Reading ${name}`,
  progress: (done: string, all: string) => `${done} of ${all} rows`,
  adding: (count: string, isOne: boolean) => `Adding ${things(count, isOne)}`,
  cancel: "Cancel",
  cancelled: (name: string) => `${name} was not read. Nothing was added.`,

  refused: (name: string) => `${name} was not read`,
  nothingAdded: "Nothing was added.",
  faults: {
    "too-large": {
      problem: "It is larger than 50 MB.",
      remedy: "Take out pictures and old sheets, or split it.",
    },
    "too-many-rows": {
      problem: "It has more than 100,000 rows.",
      remedy: "Split it, and bring in the parts.",
    },
    "too-many-columns": {
      problem: "It has more than 200 columns.",
      remedy: "Take out the columns that say nothing of your things.",
    },
    "too-much": { problem: "There is more in it than any list of things holds.", remedy: "Split it." },
    bomb: {
      problem: "Unpacked it would be far larger than it looks.",
      remedy: "Save it anew in your spreadsheet, as XLSX or CSV.",
    },
    damaged: { problem: "It is damaged.", remedy: "Save it anew, or choose another copy of it." },
    locked: {
      problem: "It has a password.",
      remedy: "Take the password off in your spreadsheet, and save it.",
    },
    "old-spreadsheet": {
      problem: "It is an old kind of spreadsheet, or one with a password.",
      remedy: "Save it as XLSX or CSV, without a password.",
    },
    pdf: { problem: "It is a PDF.", remedy: "Copy the table out of it and paste it here." },
    picture: { problem: "It is a picture.", remedy: "Copy the table out of it as text, and paste it here." },
    "web-page": { problem: "It is a web page.", remedy: "Copy the table out of it and paste it here." },
    archive: {
      problem: "It is an archive, and no spreadsheet.",
      remedy: "Unpack it, and choose the file in it.",
    },
    "no-table": {
      problem: "There is no text in it that could be a list.",
      remedy: "Save it as XLSX, ODS or CSV.",
    },
    "other-json": {
      problem: "It is JSON, and no notebook of this app.",
      remedy: "Choose a copy that was saved here, or a spreadsheet.",
    },
    empty: { problem: "There is nothing in it.", remedy: "Choose a file with a list in it." },
    unreadable: {
      problem: "The browser could not read it.",
      remedy: "Choose it again: it may have been moved or changed.",
    },
  } satisfies Readonly<Record<FileFault, Text>>,

  how: "How it is read",
  savedHere: "Saved here: each thing is read exactly as it was.",
  remembered: "Read as you read this kind of list last time.",
  sheet: "Sheet",
  sheetRows: (name: string, count: string, isOne: boolean) => `${name} (${rows(count, isOne)})`,
  delimiter: "Cells are parted by",
  delimiters: {
    ",": "commas",
    ";": "semicolons",
    "\t": "tabs",
    "|": "upright bars",
    "": "nothing: one column",
  } satisfies Readonly<Record<Delimiter, string>>,
  head: "The heads stand in",
  headNone: "no row",
  headRow: (row: string) => `row ${row}`,
  currency: "Prices are in",
  currencyHint: "where they do not say",
  family: "These are",
  familyHint: "where a row does not say",
  familyOpen: "not said",

  table: "The first rows, as they are understood",
  understood: "Understood as",
  column: (number: string) => `Column ${number}`,
  columnIs: (head: string) => `${head} is`,
  leaveOut: "left out",
  fields: {
    text: "what it is, as written",
    name: "name",
    kind: "kind",
    maker: "maker",
    line: "series",
    code: "number or code",
    gtin: "bar code",
    colour: "colour",
    hex: "colour as hex",
    medium: "medium",
    form: "form",
    grade: "grade",
    size: "size",
    gsm: "weight, gsm",
    ml: "volume, ml",
    width: "width, mm",
    sheets: "sheets in it",
    owned: "how many",
    sheetsLeft: "sheets left",
    state: "state",
    place: "where it lives",
    paid: "price paid",
    currency: "currency",
    acquired: "got it on",
    opened: "opened on",
    tags: "tags",
    note: "note",
  } satisfies Readonly<Record<Field, string>>,
  look: "Look:",
  isHere: (reason: string) => `Not added: ${reason}.`,
  nameless: "No thing",
  times: (count: string) => `${count} of them`,
  sheetsLeft: (count: string, isOne: boolean) => (isOne ? "1 sheet left" : `${count} sheets left`),

  counts: (fresh: string, here: string, refused: string) =>
    listed([
      `${fresh} to add`,
      ...(here === "0" ? [] : [`${here} already here`]),
      ...(refused === "0" ? [] : [`${refused} not understood`]),
    ]),
  doubtful: (count: string, isOne: boolean) =>
    isOne ? "In 1 row there is something to look at." : `In ${count} rows there is something to look at.`,
  leftOut: (count: string, isOne: boolean) => (isOne ? "You leave 1 out." : `You leave ${count} out.`),
  add: (count: string, isOne: boolean) => `Add ${things(count, isOne)}`,
  nothing: "There is nothing to add",
  drop: "Add none of them",
  saveRest: (count: string, isOne: boolean) => `Save the ${rows(count, isOne)} not added`,
  restName: "not-added.csv",
  restReason: "Why it was not added",
  restLeftOut: "left out by you",

  toLookAt: "Rows to look at",
  toLookAtText: "Take out what is wrong. What you add can be put right later, each thing on its own page.",
  row: "Row",
  thing: "Thing",
  why: "Look at",
  keep: "Add it",
  keepNamed: (name: string, row: string) => `Add ${name}, row ${row}`,
  notAdded: "Rows that are not added",
  reason: "Why",
  more: (count: string) => `${count} more are in the file that you can save.`,
  moreToLookAt: (count: string) => `${count} more like these.`,

  added: (count: string, isOne: boolean) => `Added ${things(count, isOne)} to the stash`,
  done: (count: string, isOne: boolean) => `${things(count, isOne)} brought in`,
  takenBack: "All of it has been taken back.",
  doneText: "Undo takes all of it back.",
  see: "See the stash",
  again: "Bring in another list",
};
