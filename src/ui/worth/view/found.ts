import type { Evidence } from "../../../engine/price/index.ts";
import { worthWords } from "../../words/worth.ts";
import { printedInHundred } from "./percent.ts";
import type { Scene } from "./scene.ts";

const words = worthWords.found;

/** The kit and line that an earlier card's price was taken from, by their names. */
function cardOf({ book }: Scene, reference: string | null | undefined): string | null {
  const [kitId, lineId] = (reference ?? "").split("/");
  const kit = (book.kits ?? []).find(({ id }) => id === kitId);
  const line = (kit?.lines ?? []).find(({ id }) => id === lineId);
  return kit && line ? `${line.supply.name}, ${kit.title || kit.maker}` : null;
}

const isSome = (fraction: string | null | undefined): fraction is string =>
  !!fraction && !/^[0.]+$/.test(fraction);

/** One price found in a sentence: what, how much, where, when, from whom. */
export function foundText(scene: Scene, evidence: Evidence): string {
  const { book, format } = scene;
  const { kind, price, market, shop, date, source, plusTax, reducedFrom } = evidence;
  const nameOf = (
    records: readonly Readonly<{ id: string; name: string }>[] | null | undefined,
    id: unknown,
  ) => (records ?? []).find((record) => record.id === id)?.name ?? null;
  const facts = [
    price ? `${words.kinds[kind]} ${format.money(price)}` : words.kinds[kind],
    cardOf(scene, evidence.line),
    nameOf(book.shops, shop),
    nameOf(book.markets, market),
    date ? format.date(date) : words.undated,
    reducedFrom ? words.reduced(format.money(reducedFrom)) : null,
    isSome(plusTax) ? words.plusTax(printedInHundred(plusTax, format)) : null,
    evidence.inStock === false ? words.outOfStock : null,
    source ?? null,
  ];
  return facts.filter((fact) => fact !== null && fact !== "").join(", ");
}
