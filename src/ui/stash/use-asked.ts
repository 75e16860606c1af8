import { useEffect, useMemo, useRef, useState } from "react";
import { type Family, families } from "../../engine/supply/index.ts";
import { useAddressValue } from "../app/navigate.ts";
import { stashWords } from "../words/stash.ts";
import { type Asked, readTraits, traitsText, withTrait } from "./view/asked.ts";
import type { FilterKey } from "./view/filters.ts";
import type { State } from "./view/known.ts";
import { type Order, orders } from "./view/order.ts";

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
const isOrder = (value: string | null): value is Order => orders.some((order) => order === value);

type Values = Readonly<
  Record<"kind" | "where" | "state" | "tag" | "maker" | "line" | "with" | "near", Value>
>;
type Value = ReturnType<typeof useAddressValue>;

/** Every value of the address that narrows the stash down. */
function useValues(): Values {
  return {
    kind: useAddressValue("kind"),
    where: useAddressValue("where"),
    state: useAddressValue("state"),
    tag: useAddressValue("tag"),
    maker: useAddressValue("maker"),
    line: useAddressValue("line"),
    with: useAddressValue("with"),
    near: useAddressValue("near"),
  };
}

const names = ["kind", "where", "state", "tag", "maker", "line", "with", "near"] as const;

/** Puts one filter into the address. What only made sense with the last one goes. */
function tick(values: Values, traits: Asked["traits"], key: FilterKey, value: string | null): void {
  if (key.startsWith("trait ")) {
    const trait = key.slice("trait ".length);
    const others = traits.filter((one) => one.trait !== trait);
    values.with[1](traitsText(value === null ? others : withTrait(others, { trait, value })));
    return;
  }
  if (key === "kind") values.with[1](null);
  if (key === "maker") values.line[1](null);
  values[key === "place" ? "where" : (key as keyof Values)][1](value); // a trait's key has returned above
}

/** What is asked of the stash, kept in the address so that it survives a reload and can be linked to. */
export function useAsked() {
  const [text, setText] = useSearchText();
  const values = useValues();
  const [view] = useAddressValue("view");
  const [sort, setSort] = useAddressValue("sort");
  const [kind, state, near] = [values.kind[0], values.state[0], values.near[0]];
  const [withText] = values.with;
  const traits = useMemo(() => readTraits(withText), [withText]);
  const asked: Asked = {
    text,
    kind: isFamily(kind) ? kind : null,
    place: values.where[0],
    state: isState(state) ? state : null,
    tag: values.tag[0],
    maker: values.maker[0],
    line: values.line[0],
    traits,
    near,
  };
  const clear = () => {
    setText("");
    for (const name of names) values[name][1](null);
  };
  return {
    asked,
    setText,
    tick: (key: FilterKey, value: string | null) => tick(values, traits, key, value),
    clear,
    /** What is close to a thing is a list, nearest first, unless the layout is asked for. */
    isList: view === "list" || (view === null && near !== null),
    order: isOrder(sort) ? sort : null,
    setSort,
  };
}

export type AskedState = ReturnType<typeof useAsked>;
