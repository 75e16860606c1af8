import { useEffect, useState } from "react";
import type { nearColours } from "./near-colours.ts";

type NearColours = typeof nearColours;

const none: NearColours = () => [];

/**
 * What finds things by their colour. The colour words are many, and are fetched when a search first begins; until
 * they are there nothing is found by colour.
 */
export function useNearColours(isSearching: boolean): NearColours {
  const [near, setNear] = useState<NearColours>(() => none);
  useEffect(() => {
    if (!isSearching || near !== none) return undefined;
    let isWanted = true;
    void import("./near-colours.ts").then((loaded) => isWanted && setNear(() => loaded.nearColours));
    return () => {
      isWanted = false;
    };
  }, [isSearching, near]);
  return near;
}
