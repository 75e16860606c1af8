import { useState } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { useBook } from "../../../store/index.ts";
import { Link } from "../../app/link.tsx";
import { go } from "../../app/navigate.ts";
import { Button } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { codeWords as words } from "../../words/codes.ts";
import { format } from "../../words/index.ts";
import { AddToStash } from "../add.tsx";
import styles from "./code.module.css";
import { type LookedUp, lookUp } from "./look-up.ts";

const none: readonly never[] = [];

/** What is said of a number, and once it stands, the things that have it or a way to add one. */
export function Outcome({ asked }: Readonly<{ asked: string }>) {
  const stash = useBook((state) => state.book.stash) ?? none;
  const looked = lookUp(asked, stash);
  return (
    <div className={styles.outcome}>
      <p role="status" className={styles.told}>
        {told(looked)}
      </p>
      {looked.kind === "found" && <Found items={looked.items} />}
      {looked.kind === "unknown" && <Unknown key={looked.code} code={looked.code} />}
    </div>
  );
}

function told(looked: LookedUp): string {
  switch (looked.kind) {
    case "found":
      return words.found(looked.code, format.count(looked.items.length), looked.items.length === 1);
    case "unknown":
      return words.unknown(looked.code);
    case "length":
      return words.length(format.count(looked.count), looked.count === 1);
    default:
      return words.notes[looked.kind];
  }
}

const Found = ({ items }: Readonly<{ items: readonly StashItem[] }>) => (
  <ul>
    {items.map((item) => (
      <li key={item.id}>
        <Link to={{ name: "stash-item", id: item.id }} className={styles.thing}>
          <Swatch item={item} width={44} height={30} />
          <span>{[item.supply.name, item.supply.maker, item.place].filter(Boolean).join(", ")}</span>
        </Link>
      </li>
    ))}
  </ul>
);

/** Once the thing is there, to it. */
function leave(code: string): void {
  const looked = lookUp(code, useBook.getState().book.stash ?? []);
  const [first] = looked.kind === "found" ? looked.items : [];
  if (first) go({ name: "stash-item", id: first.id });
}

function Unknown({ code }: Readonly<{ code: string }>) {
  const [adding, setAdding] = useState(false);
  const close = () => {
    setAdding(false);
    leave(code);
  };
  return adding ? (
    <>
      <p>{words.adding(code)}</p>
      <AddToStash asked={1} gtin={code} onDone={close} />
    </>
  ) : (
    <>
      <p className={styles.more}>{words.unknownText}</p>
      <div>
        <Button onClick={() => setAdding(true)}>{words.add}</Button>
      </div>
    </>
  );
}
