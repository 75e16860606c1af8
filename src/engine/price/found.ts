import { type Found, foundOf, newestFirst, type Scene } from "./book.ts";
import { isOwnPack, ratioOf } from "./quantity.ts";

type Kind = Found["evidence"]["kind"];

/** The line's prices of one kind, the newest first. */
export const ofKind = (scene: Scene, kind: Kind): readonly Found[] =>
  newestFirst(foundOf(scene.line)).filter(({ evidence }) => evidence.kind === kind && evidence.price);

export const ownPack = (scene: Scene, found: readonly Found[]): readonly Found[] =>
  found.filter(({ evidence }) => isOwnPack(evidence.pack, scene.line.supply));

/** Prices of another quantity that can be compared with the line's. */
export const otherPack = (scene: Scene, found: readonly Found[]): readonly Found[] =>
  found.filter(({ evidence }) => {
    const ratio = ratioOf(evidence.pack, scene.line.supply);
    return ratio !== null && !ratio.line.eq(ratio.pack);
  });
