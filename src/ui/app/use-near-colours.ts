import { useEffect, useState } from "react";
import type { nearColours } from "./near-colours.ts";

type NearColours = typeof nearColours;

const none: NearColours = () => [];

/**
 * What finds things by their colour. The colour words are many, and are fetched when a search first begins.
 * @returns null until it is known what there is to find by; without a connection nothing is found by colour
 */
export function useNearColours(isSearching: boolean): NearColours | null {
  const [near, setNear] = useState<NearColours | null>(null);
  useEffect(() => {
    if (!isSearching || near) return undefined;
    let isWanted = true;
    const take = (found: NearColours) => isWanted && setNear(() => found);
    void import("./near-colours.ts").then(
      (loaded) => take(loaded.nearColours),
      () => take(none),
    );
    return () => {
      isWanted = false;
    };
  }, [isSearching, near]);
  return near;
}
