import { ownList } from "../../engine/intake/index.ts";
import type { Language } from "../../engine/record/index.ts";
import type { StashItem } from "../../engine/supply/index.ts";
import { csvLine } from "../csv.ts";
import { textRows } from "./cells.ts";
import type { ListKind } from "./kinds.ts";
import { odsFile } from "./ods.ts";
import { xlsxFile } from "./xlsx.ts";

/** Tells other programs that the text is UTF-8; some take it for something else without. */
const mark = "\uFEFF";

/**
 * Things of the stash as a file for spreadsheets, in the language in use, that comes back in as it went out.
 * @param name of the sheet: up to 31 letters without []:*?/\
 */
export async function listFile(
  kind: ListKind,
  items: readonly StashItem[],
  language: Language,
  name: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const list = ownList(items, language);
  if (kind === "xlsx") return xlsxFile(list, name);
  if (kind === "ods") return odsFile(list, name);
  return new TextEncoder().encode(mark + textRows(list).map(csvLine).join(""));
}
