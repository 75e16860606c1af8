import type { Page } from "@playwright/test";
import type { Workbook } from "../../src/engine/workbook/index.ts";
import { hrefOf, kitTabs, type Route, remakeTabs } from "../../src/ui/app/route.ts";

const named = (name: "desk" | "kits" | "stash" | "remakes" | "markets" | "keep-safe"): Route => ({ name });

/** The address of every place that shows something of no record in particular. */
export const plainPlaces: readonly string[] = [
  ...(["desk", "kits", "stash", "remakes", "markets", "keep-safe"] as const).map((name) =>
    hrefOf(named(name)),
  ),
  "/stash?view=list",
  "/stash?bring=list",
  "/stash?save=list",
  "/stash?code=find",
  "/stash?chart=photo",
  "/stash?kin=all",
  "/stash?print=list",
  "/stash?print=chart",
  "/stash?set=new",
  "/stash?near=st-001",
  ...["doubles", "many", "low"].map((tidy) => `/stash?tidy=${tidy}`),
];

type Records = Pick<Workbook, "kits" | "stash" | "remakes">;

/** The address of every place and tab for these records. */
export const placesOf = ({ kits, stash, remakes }: Records): readonly string[] => [
  ...plainPlaces,
  ...(kits ?? []).flatMap(({ id }) => kitTabs.map((tab) => hrefOf({ name: "kit", id, tab }))),
  ...(stash ?? []).map(({ id }) => hrefOf({ name: "stash-item", id })),
  ...(remakes ?? []).flatMap(({ id }) => remakeTabs.map((tab) => hrefOf({ name: "remake", id, tab }))),
];

/** A few records of each kind, among them every kit that has been taken up. */
export function fewOf({ kits, stash, remakes }: Records): Records {
  const takenUp = new Set((remakes ?? []).map(({ kit }) => kit));
  return {
    kits: (kits ?? []).filter(({ id }, index) => index === 0 || takenUp.has(id)),
    stash: (stash ?? []).filter((_, index) => index % 40 === 0),
    remakes,
  };
}

/** Loads an address, and waits until its page stands. */
export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator("h1:visible").waitFor();
}

/** Goes to an address as the back button does, without loading the app anew. */
export async function step(page: Page, address: string): Promise<void> {
  await page.evaluate((to) => {
    history.pushState(null, "", to);
    dispatchEvent(new PopStateEvent("popstate"));
  }, address);
  await page.locator("h1:visible").waitFor();
}
