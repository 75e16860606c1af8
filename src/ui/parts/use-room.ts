import { type RefObject, useLayoutEffect, useRef, useState } from "react";
import { onPaper, type Room } from "./room.ts";
import { usePrinting } from "./use-printing.ts";

const textScale = (): number =>
  Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1;

/** How wide an element is, or the sheet of paper, and how large the text: null until it has been measured. */
export function useRoom(): readonly [RefObject<HTMLDivElement | null>, Room | null] {
  const ref = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<Room | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const measure = () => {
      const next = { width: Math.floor(element.clientWidth), textScale: textScale() };
      if (next.width === 0) return; // hidden for a moment: what was drawn last stays
      setRoom((last) => (last?.width === next.width && last.textScale === next.textScale ? last : next));
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  const printing = usePrinting();
  return [ref, room && printing ? onPaper : room];
}
