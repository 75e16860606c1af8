import type { StoreFault, StoreFaultKind } from "../faults.ts";

type FaultTexts = Readonly<
  Record<Exclude<StoreFaultKind, "refused">, Pick<StoreFault, "problem" | "safe" | "remedy">>
>;

const onScreen = "Everything saved before it is still kept, and the change itself is still on screen.";
const nothingChanged = "Nothing was changed.";

const faults: FaultTexts = {
  quota: {
    problem: "There is no room left to keep this change.",
    safe: onScreen,
    remedy: "Save a copy now, or free some space and try again.",
  },
  interrupted: {
    problem: "The browser broke off before the change was kept.",
    safe: onScreen,
    remedy: "Save a copy now, or try again.",
  },
  closed: {
    problem: "The browser has closed the place where changes are kept.",
    safe: onScreen,
    remedy: "Save a copy now, then reload this tab and try again.",
  },
  newer: {
    problem: "A newer version of the app has been used here, so this tab only reads.",
    safe: nothingChanged,
    remedy: "Reload this tab to get the newer version, or save a copy now.",
  },
  stale: {
    problem: "Something was changed in another tab first.",
    safe: "Both tabs now show the same, and nothing was lost.",
    remedy: "Look at what is there now, and try again.",
  },
  damaged: {
    problem: "What is kept here cannot be read.",
    safe: "It has not been touched.",
    remedy: "Restore a backup, or try again.",
  },
  unavailable: {
    problem: "This browser keeps nothing here: a private window, or storage is switched off.",
    safe: "You can work, but only until this tab is closed.",
    remedy: "Save a copy before you close it, or open the app in an ordinary window.",
  },
};

const fields: ReadonlyMap<string, string> = new Map([
  ["boughtForThis", "buying note"],
  ["fromKit", "kit it came from"],
  ["gsm", "weight"],
  ["kits", "number of kits"],
  ["loggedOn", "log date"],
  ["ml", "volume"],
  ["owned", "number owned"],
  ["qty", "number"],
  ["received", "received mark"],
  ["reportMarkets", "markets to report on"],
  ["spokenMarket", "market to speak of"],
  ["twinOf", "twins"],
  ["valuedOn", "date of the prices"],
  ["want", "share you would use"],
  ["widthMm", "width"],
]);

/** A field by the word for it: "place", "sheets left". */
const field = (name: string): string =>
  fields.get(name) ?? name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** "1 item", "3 items". */
const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** The names of acts, as what to do, and what is said where something cannot be kept. */
export const storeWords = {
  faults,
  nothingChanged,
  /** The act before which an upgrade of the database keeps a snapshot. */
  updateApp: "Update the app",
  nothingTo: { undo: "There is nothing to undo.", redo: "There is nothing to redo." },
  goOn: "Go on from what is there.",
  goBack: (label: string) => `Go back to before: ${label}`,

  unnamed: "an unnamed supply",
  change: (name: string, of: string) => `Change the ${field(name)} of ${of}`,
  changeHome: (name: string) => `Change the ${field(name)}`,

  nameBook: (name: string) => `Name the workbook ${name}`,
  setWeight: (trait: string, family: string) => `Change how much ${trait} counts for ${family}`,
  addKinships: (count: number) => (count === 1 ? "Link two products" : `Link ${count} pairs of products`),
  kinship: "a link of two products",
  removeKinship: "Unlink two products",
  addPhoto: "Add a photo",
  removePhoto: "Remove a photo",
  addPhotoOf: (item: string) => `Add a photo of ${item}`,
  removePhotoOf: (item: string) => `Remove a photo of ${item}`,
  addRequest: "Add a request",
  request: "a request",
  removeRequest: "Remove a request",

  addKit: (kit: string) => `Log the kit ${kit}`,
  removeKit: (kit: string, remakes: number) =>
    `Remove the kit ${kit}${remakes > 0 ? ` and ${counted(remakes, "remake")}` : ""}`,
  addTier: (tier: string, kit: string) => `Add the tier ${tier} to ${kit}`,
  tier: (tier: string) => `the tier ${tier}`,
  removeTier: (tier: string, kit: string) => `Remove the tier ${tier} from ${kit}`,

  addLine: (line: string, kit: string) => `Add ${line} to ${kit}`,
  addLines: (count: number, kit: string) => `Add ${counted(count, "line")} to ${kit}`,
  moveLine: (line: string, kit: string) => `Move ${line} in ${kit}`,
  removeLine: (line: string, kit: string) => `Remove ${line} from ${kit}`,
  addEvidence: (line: string) => `Add a price found for ${line}`,
  evidence: (line: string) => `a price found for ${line}`,
  removeEvidence: (line: string) => `Remove a price found for ${line}`,
  settle: (line: string) => `Choose the price to go with for ${line}`,
  unsettle: (line: string) => `Leave open the price to go with for ${line}`,

  startRemake: (kit: string) => `Start a remake of ${kit}`,
  remake: "the remake",
  removeRemake: (kit: string) => `Remove the remake of ${kit}`,
  setPick: (line: string) => `Choose what stands in for ${line}`,
  clearPick: (line: string) => `Clear what stands in for ${line}`,
  setVerdict: (line: string) => `Give a verdict on ${line}`,
  addLogEntry: "Note something in the log",
  removeLogEntry: "Remove a note from the log",

  addStashItem: (item: string) => `Add ${item} to the stash`,
  bringIn: (items: string, list: string) =>
    list === "" ? `Bring in ${items}` : `Bring in ${items} from ${list}`,
  takeColours: (items: string) => `Take the colours of ${items} from a photo`,
  items: (count: number) => counted(count, "item"),
  takeOut: (count: number, unit: "piece" | "sheet", item: string) =>
    `Take ${counted(count, unit)} of ${item}`,
  putIn: (count: number, unit: "piece" | "sheet", item: string) => `Add ${counted(count, unit)} of ${item}`,
  removeStashItem: (item: string) => `Remove ${item} from the stash`,

  changeSeveral: (items: string) => `Change ${items}`,
  mergeItems: (count: number, item: string) => `Merge ${count} into one: ${item}`,
  keepApart: (item: string) => `Keep ${item} and its doubles apart`,

  bringBack: "Bring back what was removed",
  removeSample: "Remove the sample",
};
