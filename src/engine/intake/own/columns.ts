import type { Language } from "../../record/index.ts";
import { ownWordsIn } from "../words/index.ts";
import { familyWord, fromWord, stateWord, traitWord, traitWords, yesNo } from "./said.ts";
import { amount, type Codec, day, number, size, text, texts, triple } from "./written.ts";

type Key = keyof (typeof ownWordsIn)["en"]["heads"];

/**
 * One column of our own list: where in an item its value is, and how it is written and read. `always`: it stands in
 * every list, others only where something has it. `unsaid`: what a value that is left out stands for; it is written,
 * and left out again when it is read.
 */
export type OwnColumn = Readonly<{
  key: Key;
  path: readonly [string, ...string[]];
  codec: Codec;
  always?: boolean;
  unsaid?: unknown;
}>;

const own = (key: Key, codec: Codec, ...path: [string, ...string[]]): OwnColumn => ({ key, path, codec });
const always = (column: OwnColumn): OwnColumn => ({ ...column, always: true });
const unsaid = (column: OwnColumn, value: unknown): OwnColumn => ({ ...column, always: true, unsaid: value });
const supply = (key: Key, codec: Codec): OwnColumn => own(key, codec, "supply", key);
const trait = (key: Key, codec: Codec): OwnColumn => own(key, codec, "supply", "traits", key);
const word = (key: Key): OwnColumn => trait(key, traitWord(key));

/** The columns in their order. What is written by them is read by them, so that a list comes back as it went out. */
export const ownColumns: readonly OwnColumn[] = [
  always(own("kind", familyWord, "supply", "family")),
  always(supply("name", text)),
  always(supply("maker", text)),
  always(supply("line", text)),
  always(supply("code", text)),
  always(own("colour", text, "supply", "colour", "name")),
  always(own("hex", text, "supply", "colour", "hex")),
  own("lab", triple, "supply", "colour", "lab"),
  own("white", text, "supply", "colour", "white"),
  own("from", fromWord, "supply", "colour", "from"),
  word("base"),
  word("medium"),
  word("form"),
  trait("ml", number),
  trait("pigments", texts),
  word("opacity"),
  trait("tips", traitWords("tips")),
  word("tip"),
  trait("widthMm", number),
  trait("refillable", yesNo),
  trait("waterproof", yesNo),
  word("core"),
  word("grade"),
  word("binder"),
  own("sort", traitWord("kind"), "supply", "traits", "kind"),
  word("shape"),
  word("hair"),
  trait("waterReservoir", yesNo),
  word("use"),
  trait("size", size),
  trait("gsm", number),
  trait("sheets", number),
  word("surface"),
  word("coated"),
  trait("acidFree", yesNo),
  word("bound"),
  supply("lightfast", text),
  supply("safety", text),
  unsaid(own("owned", number, "owned"), 1),
  own("sheetsLeft", number, "sheetsLeft"),
  unsaid(own("state", stateWord, "state"), "ok"),
  always(own("place", text, "place")),
  own("acquired", day, "acquired"),
  own("opened", day, "opened"),
  own("paid", amount, "paid", "amount"),
  own("currency", text, "paid", "currency"),
  own("boughtForThis", yesNo, "boughtForThis"),
  own("tags", texts, "tags"),
  own("note", text, "note"),
  supply("gtin", text),
  own("fromKit", text, "fromKit"),
  own("twinOf", texts, "twinOf"),
  own("importKey", text, "importKey"),
  always(own("id", text, "id")),
];

export const headOf = ({ key }: OwnColumn, language: Language): string => ownWordsIn[language].heads[key];
