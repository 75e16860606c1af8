import type { Order } from "../../stash/view/order.ts";

/** The words of finding and choosing in the Stash, in English. Counts come in as printed. */
export const findWords = {
  maker: "Maker",
  line: "Line",
  tag: "Tag",
  yes: "yes",
  no: "no",
  moreFilters: "More to narrow down by",
  fewerFilters: "Fewer",

  sort: "Sorted by",
  orders: { near: "nearness", name: "name", place: "place", newest: "last added" } satisfies Readonly<
    Record<Order, string>
  >,

  closeTo: "Close to this one",
  nearTo: (count: string, name: string) => `${count} nearest to ${name}`,
  notNear: "All colours again",
  namedAnd: (named: string, count: string) => `${named} called so, ${count} of that colour`,
  leftAside: (found: string, words: string) => `${found}; nothing goes by “${words}”`,

  choose: "Choose several",
  chooseEnd: "Done choosing",
  chooseOne: (name: string) => `Choose ${name}`,
  chosen: (count: string) => `${count} chosen`,
  hidden: (count: string) => `(${count} not among those found)`,
  chosenNone: "Tick what you want to change together. With Shift you take all between.",
  all: (count: string) => `Choose all ${count} found`,
  none: "Choose none",
  change: "Change…",
  remove: "Remove…",

  tidy: "Keep it right",
};
