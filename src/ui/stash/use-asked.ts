import { useEffect, useRef, useState } from "react";
import { type Family, families } from "../../engine/supply/index.ts";
import { useAddressValue } from "../app/navigate.ts";
import { stashWords } from "../words/stash.ts";
import type { Asked } from "./view/find.ts";
import type { State } from "./view/known.ts";

/** How long typing rests before the address follows: browsers refuse addresses that change at every key. */
const settleMs = 400;

/** The text searched for: at once on screen, a little later in the address. */
function useSearchText(): readonly [string, (text: string) => void] {
  const [kept, keep] = useAddressValue("q");
  const [text, setText] = useState(kept ?? "");
  const written = useRef(kept);
  useEffect(() => {
    if (kept === written.current) return;
    written.current = kept; // the address was changed elsewhere: a step back, a link
    setText(kept ?? "");
  }, [kept]);
  useEffect(() => {
    const wanted = text === "" ? null : text;
    if (wanted === written.current) return undefined;
    const timer = setTimeout(() => {
      written.current = wanted;
      keep(wanted);
    }, settleMs);
    return () => clearTimeout(timer);
  }, [text, keep]);
  return [text, setText];
}

const isFamily = (value: string | null): value is Family => families.some((family) => family === value);
const isState = (value: string | null): value is State =>
  value !== null && Object.hasOwn(stashWords.states, value);

/** What is asked of the stash, kept in the address so that it survives a reload and can be linked to. */
export function useAsked() {
  const [text, setText] = useSearchText();
  const [kind, setKind] = useAddressValue("kind");
  const [place, setPlace] = useAddressValue("where");
  const [state, setState] = useAddressValue("state");
  const [view, setView] = useAddressValue("view");
  const asked: Asked = {
    text,
    kind: isFamily(kind) ? kind : null,
    place,
    state: isState(state) ? state : null,
  };
  const clear = () => {
    setText("");
    setKind(null);
    setPlace(null);
    setState(null);
  };
  return { asked, setText, setKind, setPlace, setState, clear, isList: view === "list", setView };
}

export type AskedState = ReturnType<typeof useAsked>;
