import { type FocusEvent, type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react";

/** A stretch of a long list: pieces to draw, or a gap as high as those left out. */
export type Stretch = Readonly<{ piece: number }> | Readonly<{ gap: number; from: number }>;

type Range = Readonly<{ from: number; to: number }>;

type Rolled = Readonly<{
  stretches: readonly Stretch[];
  /** To be set on each piece: what has the focus stays drawn, wherever one scrolls. */
  onFocus: (event: FocusEvent<HTMLElement>) => void;
  onBlur: () => void;
}>;

type Options = Readonly<{
  /** What holds the pieces. */
  list: RefObject<HTMLElement | null>;
  /** How many pieces there are. Each is drawn as one element with its number in `data-piece`. */
  count: number;
  /** How high a piece is about, until one has been measured. */
  aboutPx: number;
  /** Pieces that are drawn wherever they lie. */
  keep?: readonly number[];
  /** Everything is drawn, as on paper. */
  all?: boolean;
  /** How far beyond the window pieces are drawn already, in heights of the window. */
  beyond?: number;
}>;

/** The pieces that a stretch of the page meets. `heightOf` in px, from the top of the list. */
export function piecesIn(
  top: number,
  bottom: number,
  count: number,
  heightOf: (piece: number) => number,
): Range {
  let [at, from, to] = [0, count, count];
  for (let piece = 0; piece < count; piece++) {
    const end = at + heightOf(piece);
    if (from === count && end > top) from = piece;
    if (at >= bottom) {
      to = piece;
      break;
    }
    at = end;
  }
  // Above or below it all: the nearest piece stays, so that there is something to measure and to scroll from.
  const nearest = Math.max(0, Math.min(from, count - 1));
  return from < to ? { from, to } : { from: nearest, to: Math.min(nearest + 1, count) };
}

/** The drawn pieces in order, with a gap wherever some are left out. */
export function stretchesOf(
  drawn: ReadonlySet<number>,
  count: number,
  heightOf: (piece: number) => number,
): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let [gap, from] = [0, 0];
  for (let piece = 0; piece < count; piece++) {
    if (drawn.has(piece)) {
      if (gap > 0) stretches.push({ gap, from });
      stretches.push({ piece });
      [gap, from] = [0, piece + 1];
    } else gap += heightOf(piece);
  }
  return gap > 0 ? [...stretches, { gap, from }] : stretches;
}

/**
 * The height of the lowest whole piece drawn at first, for all that are not drawn yet. It is never changed again: a gap
 * that grew or shrank would move what is being pressed.
 */
function usualHeight(heights: ReadonlyMap<number, number>, count: number): number | null {
  const whole = [...heights].flatMap(([piece, height]) => (piece < count - 1 && height > 0 ? [height] : []));
  return whole.length > 0 ? Math.min(...whole) : null;
}

const pieceOf = (target: EventTarget): number | null => {
  const piece = target instanceof Element ? target.closest<HTMLElement>("[data-piece]")?.dataset.piece : null;
  return piece === null || piece === undefined ? null : Number(piece);
};

/**
 * Draws of a long list only what is near the window, so that ten thousand rows cost no more than a hundred.
 * Heights need not be known: each piece is measured once drawn, and the browser holds its place when one differs.
 */
export function useRolled({ list, count, aboutPx, keep = [], all = false, beyond = 0.6 }: Options): Rolled {
  const heights = useRef(new Map<number, number>());
  const [range, setRange] = useState<Range>(() => ({
    from: 0,
    to: Math.ceil((innerHeight * 0.6) / aboutPx),
  }));
  const [focused, setFocused] = useState<number | null>(null);
  const about = useRef<number | null>(null);
  const heightOf = (piece: number) => heights.current.get(piece) ?? about.current ?? aboutPx;

  const look = useRef(() => {});
  useLayoutEffect(() => {
    for (const piece of list.current?.querySelectorAll<HTMLElement>("[data-piece]") ?? [])
      heights.current.set(Number(piece.dataset.piece), piece.getBoundingClientRect().height);
    about.current ??= usualHeight(heights.current, count);
    look.current = () => {
      if (!list.current) return;
      const { top } = list.current.getBoundingClientRect();
      const more = innerHeight * beyond;
      const next = piecesIn(-top - more, innerHeight - top + more, count, heightOf);
      setRange((last) => (last.from === next.from && last.to === next.to ? last : next));
    };
    look.current();
  });
  useEffect(() => {
    look.current(); // the list stands around the pieces, so that it is known only after them
    let asked = 0;
    const follow = () => {
      asked ||= requestAnimationFrame(() => {
        asked = 0;
        look.current();
      });
    };
    addEventListener("scroll", follow, { passive: true });
    addEventListener("resize", follow);
    return () => {
      cancelAnimationFrame(asked);
      removeEventListener("scroll", follow);
      removeEventListener("resize", follow);
    };
  }, []);

  const drawn = new Set([...keep, ...(focused === null ? [] : [focused])]);
  const { from, to } = all ? { from: 0, to: count } : range;
  for (let piece = from; piece < Math.min(to, count); piece++) drawn.add(piece);
  return {
    stretches: stretchesOf(drawn, count, heightOf),
    onFocus: (event) => setFocused(pieceOf(event.target)),
    onBlur: () => setFocused(null),
  };
}
