import { useEffect, useRef } from "react";
import { create } from "zustand";
import { areKeysOn, keepKeysOn } from "../../store/index.ts";

const useKeys = create<{ on: boolean }>(() => ({ on: areKeysOn() }));

/** Whether single-key shortcuts are on. */
export const useKeysOn = (): boolean => useKeys((state) => state.on);

/** Turns single-key shortcuts on or off, and keeps the choice on this device. */
export function setKeysOn(on: boolean): void {
  useKeys.setState({ on });
  keepKeysOn(on);
}

const writes = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches("textarea, select, input:not([type=radio], [type=checkbox])"));

/** What is written in has an undo of its own; choices and files have none. */
const hasOwnUndo = (target: EventTarget | null): boolean =>
  writes(target) &&
  target instanceof HTMLElement &&
  !target.matches("select, input:is([type=file], [type=color])");

/** A single key that does something wherever nothing is being written and no dialog is open. */
export function useKey(key: string, act: () => void): void {
  const on = useKeysOn();
  const latest = useLatest(act);
  useEffect(() => {
    if (!on) return undefined;
    return onKey((event) => {
      if (event.key !== key || event.ctrlKey || event.metaKey || event.altKey) return;
      if (writes(event.target) || document.querySelector("dialog[open]")) return;
      event.preventDefault();
      latest.current();
    });
  }, [key, on, latest]);
}

/** Ctrl or Cmd and a letter, outside of fields, which have an undo of their own. `shift` says with Shift or without. */
export function useChord(letter: string, shift: boolean, act: () => void): void {
  const latest = useLatest(act);
  useEffect(
    () =>
      onKey((event) => {
        const isChord = (event.ctrlKey || event.metaKey) && event.shiftKey === shift && !event.altKey;
        if (!isChord || event.key.toLowerCase() !== letter || hasOwnUndo(event.target)) return;
        event.preventDefault();
        latest.current();
      }),
    [letter, shift, latest],
  );
}

/** Ctrl or Cmd and a sign, in fields too. Shift is not asked for: many keyboards need it for the sign itself. */
export function useSignChord(sign: string, act: () => void): void {
  const latest = useLatest(act);
  useEffect(
    () =>
      onKey((event) => {
        const isChord = (event.ctrlKey || event.metaKey) && !event.altKey && event.key === sign;
        if (!isChord || document.querySelector("dialog[open]")) return;
        event.preventDefault();
        latest.current();
      }),
    [sign, latest],
  );
}

function onKey(handle: (event: KeyboardEvent) => void): () => void {
  addEventListener("keydown", handle);
  return () => removeEventListener("keydown", handle);
}

function useLatest(act: () => void) {
  const latest = useRef(act);
  useEffect(() => {
    latest.current = act;
  });
  return latest;
}
