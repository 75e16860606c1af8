import type { AnchorHTMLAttributes, MouseEvent, Ref } from "react";
import { go } from "../app/navigate.ts";
import { hrefOf } from "../app/route.ts";

type Props = Omit<AnchorHTMLAttributes<HTMLAnchorElement>, "href" | "onClick"> &
  Readonly<{
    id: string;
    /** Stays where it is on the page, for what opens beside it; else the new page starts at its top. */
    stays: boolean;
    /** Shown, but not to be chosen: it does not fit what is searched for. */
    out?: boolean;
    ref?: Ref<HTMLAnchorElement>;
  }>;

const leaveToBrowser = (event: MouseEvent): boolean =>
  event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey;

/** The address of an item, with the view as it is now. */
export const itemAddress = (id: string): string => hrefOf({ name: "stash-item", id }) + location.search;

/** The address of the stash, with the view as it is now. */
export const stashAddress = (): string => hrefOf({ name: "stash" }) + location.search;

/** Where something else than the stash itself is shown: `/stash?bring=list`. */
export const otherAddress = (word: string, value: string): string =>
  `${hrefOf({ name: "stash" })}?${new URLSearchParams({ [word]: value })}`;

/** The same for the things that are searched for now: `/stash?q=moss&save=list`. */
export function otherOfThese(word: string, value: string): string {
  const query = new URLSearchParams(location.search);
  for (const other of ["save", "print"]) query.delete(other);
  query.set(word, value);
  return `${hrefOf({ name: "stash" })}?${query}`;
}

let stayed: HTMLElement | null = null;

/** What had the focus when an address was gone to by `goStaying`; told once. */
export function takeStayed(): HTMLElement | null {
  const from = stayed;
  stayed = null;
  return from;
}

/** Goes to an address of the stash, and stays where the reader is on the page; `from` keeps the focus. */
export function goStaying(address: string, from: HTMLElement | null): void {
  stayed = from;
  const y = scrollY;
  go(address);
  scrollTo(0, y);
}

/** A link that chooses an item and keeps the view. */
export function ItemLink({ id, stays, out = false, ...rest }: Props) {
  const address = itemAddress(id);
  const choose = (event: MouseEvent<HTMLAnchorElement>) => {
    if (leaveToBrowser(event)) return;
    event.preventDefault();
    if (out) return;
    if (stays) goStaying(address, event.currentTarget);
    else go(address);
  };
  return (
    <a {...rest} href={out ? undefined : address} onClick={choose}>
      {rest.children}
    </a>
  );
}
