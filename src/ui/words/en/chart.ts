import type { Doubt } from "../../../engine/colour/index.ts";
import { listed } from "./say.ts";

const things = (count: string, isOne: boolean): string => (isOne ? "1 thing" : `${count} things`);
const swatches = (count: string, isOne: boolean): string => (isOne ? "1 swatch" : `${count} swatches`);

/** The words of taking colours from a photo of a swatch chart, in English. Counts come in as printed. */
export const chartWords = {
  title: "Take colours from a photo",
  lead: "One photo of your swatch chart becomes a colour for each swatch on it.",
  leadMore: "You see every colour before any of it is kept, and one undo takes it all back.",
  note: "A colour on a screen or from a photo is an approximation. Swatch on the real paper before you rely on it.",

  pick: "Choose a photo",
  take: "Take a photo",
  pickAnother: "Choose another photo",
  drop: "Or drop one here.",
  stays: "The photo stays on this device and is not kept: only its colours are.",
  blank: "No chart yet?",
  how: "A good photo of a chart",
  howTo: [
    "Equal swatches in straight rows, with bare white paper between or around them.",
    "Daylight from one side, no flash, nothing shining; the shadow of your hand off the chart.",
    "From straight above as far as you can, with some paper all around.",
  ],

  opening: (name: string) => `Opening ${name}`,
  cancel: "Cancel",
  cancelled: (name: string) => `${name} was not read. Nothing was changed.`,
  refused: (name: string) => `${name} was not read`,
  nothingChanged: "Nothing was changed.",
  unread: {
    problem: "The file cannot be read.",
    remedy: "Choose it again: it may have been moved or changed.",
  },

  marking: "Mark the chart",
  markingText:
    "Drag the four corners to the outer corners of the corner swatches. By keyboard: Tab to a corner, then the arrow keys; with Shift they go further.",
  stage: "The photo, with the squares as they will be read",
  corners: [
    "First corner, where the first row starts",
    "Second corner, where the first row ends",
    "Third corner, where the last row ends",
    "Fourth corner, where the last row starts",
  ],
  paperSpot: (number: string) => `Bare paper ${number}`,
  spot: "marked spot",
  at: (across: string, down: string) => `${across} of 100 across, ${down} of 100 down`,
  rows: "Rows",
  columns: "Swatches in a row",
  count: "A whole number from 1 to 60.",
  gap: "Paper between swatches",
  gaps: { none: "none", little: "little", some: "some", much: "much" },
  white: "The paper is",
  whites: { white: "white", cream: "cream" },
  paper: "Bare paper",
  paperText:
    "Bare paper tells what the light was. It is looked for between and around the swatches; point at some only if that goes wrong.",
  pointAt: "Point at bare paper",
  pointed: "Marked where paper seems to be. Move it if that is no bare paper.",
  noPoint: "None was found by itself. Move the mark to bare paper.",
  unpoint: "Take the mark away",
  read: "Read the colours",
  readFirst: "Write how many rows and swatches first",
  reading: "Reading the colours",
  cannot: "The colours could not be read",
  lost: "The browser ran out of room for it.",
  lostFix: "Close other tabs and choose the photo again.",

  result: (read: string, all: string, isOne: boolean) =>
    isOne ? `${read} of 1 swatch has a colour` : `${read} of ${all} swatches have a colour`,
  doubtful: (count: string, isOne: boolean) =>
    isOne
      ? "1 is in doubt and gets none; the reason stands beside it."
      : `${count} are in doubt and get none; the reason stands beside each.`,
  light: {
    even: "The light was even.",
    uneven: (times: string) => `The light was ${times} times as strong at one end; that is levelled.`,
    warm: "It was warm; that is levelled too.",
    cool: "It was cool; that is levelled too.",
    around: "No paper was found between the swatches, so the light was told from around them.",
  },
  markAnew: "Mark it again",

  what: "What the swatches are",
  whats: { stash: "things in my stash", fresh: "new things" },
  find: "Find them",
  findHint: "maker, line, kind or place",
  start: "The first swatch is number",
  startHint: "of those found: a second sheet begins where the first left off",
  foundNone: "Write what they have in common, or choose them one by one below.",
  found: (found: string, all: string, isOne: boolean) =>
    isOne ? `1 thing found for ${all}` : `${found} things found for ${all}`,
  foundMore: "The swatches take the first of them, in order.",
  foundLess: "The last swatches are left over.",
  swatches,
  each: "What each of them is",
  eachHint: "as you would say it: gouache tube 15 ml, wax colour pencil",
  eachMissing: "Say what they are first: gouache tube, colour pencil, marker.",
  understood: (name: string, facts: string) => `Understood as ${[name, facts].filter(Boolean).join(", ")}.`,
  maker: "Maker",
  line: "Line",
  names: "Their names or numbers",
  namesHint: "one a line, in the order of the swatches; without any they are numbered",

  list: "The swatches, row by row",
  cell: (number: string) => `Swatch ${number}`,
  place: (row: string, column: string) => `row ${row}, ${column} along`,
  lab: (l: string, a: string, b: string) => `L ${l}, a ${a}, b ${b}`,
  even: "even",
  varies: (by: string) => `varies by about ${by}`,
  nobody: "no thing chosen",
  leftOut: "left out",
  choose: "choose",
  change: "change",
  chooseFor: (number: string) => `Choose the thing for swatch ${number}`,
  changeFor: (number: string) => `Change the thing for swatch ${number}`,
  thing: (number: string) => `Swatch ${number} is`,
  twice: "stands at another swatch too: the last one counts",
  doubts: {
    "few-pixels": "too small in the photo",
    glare: "light shines in it",
    shadow: "the edge of a shadow lies on it",
    uneven: "more than one colour in it",
    clipped: "stronger than the photo can show",
    empty: "nothing but paper",
  } satisfies Readonly<Record<Doubt, string>>,
  noColour: (why: readonly string[]) => `No colour: ${listed(why)}.`,
  beside: (miss: readonly string[]) =>
    miss.length === 0 ? "As good as what you typed" : `Beside what you typed: ${listed(miss)}`,
  besideMeasured: (miss: readonly string[]) =>
    miss.length === 0 ? "As good as last time" : `Beside last time: ${listed(miss)}`,
  besideFigures: (apart: string, near: string) => `${apart} apart, ${near} of 100 near`,
  farOff: "Is this the right thing?",
  colourOf: (number: string) => `Colour of swatch ${number}`,
  uses: {
    measured: "use measured",
    seen: "use what was seen all the same",
    typed: "keep typed",
    kept: "keep what it has",
    none: "leave it without",
  },

  keep: (count: string, isOne: boolean) => (isOne ? "Keep 1 colour" : `Keep ${count} colours`),
  add: (count: string, isOne: boolean) => `Add ${things(count, isOne)}`,
  keepNone: "Say what the swatches are first",
  kept: (count: string, isOne: boolean) =>
    isOne ? "Took 1 colour from a photo" : `Took ${count} colours from a photo`,
  added: (count: string, isOne: boolean) => `Added ${things(count, isOne)} from a photo`,
  done: (count: string, isOne: boolean) =>
    isOne ? "1 thing has its measured colour" : `${count} things have their measured colour`,
  doneText: "Undo takes all of it back.",
  takenBack: "All of it has been taken back.",
  see: "See the stash",
  again: "Read another photo",
};
