import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { format } from "../../words/index.ts";

type Named = Readonly<{ id: string; name: string }>;

/** The name of a market or shop by its id; the id itself where there is none. */
export const nameOf = (records: readonly Named[] | null | undefined, id: string): string =>
  (records ?? []).find((record) => record.id === id)?.name ?? id;

export const kitName = (kit: Kit): string => kit.title || `${kit.maker} ${format.month(kit.period)}`;

/** An id for a new market, readable on a command line: "Åland Islands" is `aland-islands`; numbered when taken. */
export function marketId(name: string, markets: Workbook["markets"]): string {
  const plain = name
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, " ")
    .trim()
    .replaceAll(" ", "-");
  const stem = plain === "" ? "market" : plain;
  const taken = new Set((markets ?? []).map(({ id }) => id));
  let id = stem;
  for (let number = 2; taken.has(id); number += 1) id = `${stem}-${number}`;
  return id;
}
