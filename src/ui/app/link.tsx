import type { AnchorHTMLAttributes, MouseEvent } from "react";
import { goAndDo } from "./acts.ts";
import { addressOf, go, type Target } from "./navigate.ts";

type Props = Omit<AnchorHTMLAttributes<HTMLAnchorElement>, "href"> &
  Readonly<{
    to: Target;
    /** What is done there at once, by its name in the search field. */
    act?: string | undefined;
  }>;

/** The browser opens these by itself: a new tab, a new window, a download. */
const leaveToBrowser = (event: MouseEvent) =>
  event.defaultPrevented ||
  event.button !== 0 ||
  event.metaKey ||
  event.ctrlKey ||
  event.shiftKey ||
  event.altKey;

/** A link within the app: a real address, opened without loading the page anew. */
export function Link({ to, act, onClick, ...rest }: Props) {
  const follow = (event: MouseEvent<HTMLAnchorElement>) => {
    onClick?.(event);
    if (leaveToBrowser(event) || rest.target !== undefined) return;
    event.preventDefault();
    if (act === undefined) go(to);
    else goAndDo(to, act);
  };
  return <a {...rest} href={addressOf(to)} onClick={follow} />;
}
