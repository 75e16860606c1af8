import { useCallback, useMemo, useSyncExternalStore } from "react";
import { hrefOf, parseRoute, type Route } from "./route.ts";

/** Where a link leads: a route, or an address on this site. */
export type Target = Route | string;

const moved = "understudy:moved";

export const addressOf = (target: Target): string => (typeof target === "string" ? target : hrefOf(target));

/**
 * Goes to an address of the app. With `replace` the step back leads past the present address.
 * A new page starts at its top; a change of the query alone leaves the page where it is.
 */
export function go(target: Target, how: "push" | "replace" = "push"): void {
  const from = location.pathname;
  const address = addressOf(target);
  if (how === "push") history.pushState(null, "", address);
  else history.replaceState(null, "", address);
  dispatchEvent(new Event(moved));
  if (location.pathname !== from) scrollTo(0, 0);
}

function watchAddress(tell: () => void): () => void {
  addEventListener("popstate", tell);
  addEventListener(moved, tell);
  return () => {
    removeEventListener("popstate", tell);
    removeEventListener(moved, tell);
  };
}

/** The path in the address bar, without query. */
export const usePath = (): string => useSyncExternalStore(watchAddress, () => location.pathname);

/** The route in the address bar. */
export function useRoute(): Route {
  const path = usePath();
  return useMemo(() => parseRoute(path), [path]);
}

/** The query in the address bar, as it stands there. */
export const useQuery = (): string => useSyncExternalStore(watchAddress, () => location.search);

/**
 * One named value of the query, such as the market looked at, so that it survives reload and can be linked to.
 * @returns the value, or null when the address has none, and a setter; null takes it out of the address.
 */
export function useAddressValue(name: string): readonly [string | null, (value: string | null) => void] {
  const value = useSyncExternalStore(watchAddress, () => new URLSearchParams(location.search).get(name));
  const set = useCallback((next: string | null) => go(withAddressValue(name, next), "replace"), [name]);
  return [value, set];
}

/** The present address with one value of its query changed: for links that switch a view. */
export function withAddressValue(name: string, value: string | null): string {
  const query = new URLSearchParams(location.search);
  if (value === null) query.delete(name);
  else query.set(name, value);
  const text = query.toString();
  return location.pathname + (text === "" ? "" : `?${text}`);
}
