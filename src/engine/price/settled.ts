import type { Choice, Scene } from "./book.ts";
import type { Method } from "./trace.ts";

type Kind = "list" | "street";

/** What a person settled for a line, in the order it counts: this market's, then for all; later first. */
export function choicesOf(scene: Scene, kind: Kind): readonly Choice[] {
  const all = (scene.line.settled ?? [])
    .map((settled, index) => ({ settled, index }))
    // Which of the two was settled may be left out; the list price is what people settle.
    .filter(({ settled }) => (settled.kind ?? "list") === kind)
    .toReversed();
  const own = all.filter(({ settled }) => settled.market === scene.market.id);
  return [...own, ...all.filter(({ settled }) => !settled.market)];
}

/** List choices that a precedent may rest on: as above, then those of other markets. */
export function choicesAnywhere(scene: Scene): readonly Choice[] {
  const here = choicesOf(scene, "list");
  const elsewhere = (scene.line.settled ?? [])
    .map((settled, index) => ({ settled, index }))
    .filter(({ settled }) => (settled.kind ?? "list") === "list")
    .filter(({ index }) => !here.some((choice) => choice.index === index))
    .toReversed();
  return [...here, ...elsewhere];
}

/** The method a settled entry names among `known`; "precedent" is read as "precedents", others are ignored. */
export function methodNamed<M extends Method>(choice: Choice, known: readonly M[]): M | undefined {
  const name = choice.settled.method === "precedent" ? "precedents" : choice.settled.method;
  return known.find((method) => method === name);
}
