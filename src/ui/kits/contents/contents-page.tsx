import { lazy, Suspense, useMemo, useState } from "react";
import type { Kit } from "../../../engine/worth/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { KitFrame } from "../kit-frame.tsx";
import { contentsView } from "../view/line-rows.ts";
import { About } from "./about.tsx";
import styles from "./contents.module.css";
import { Entry } from "./entry.tsx";
import { LineItem } from "./line-item.tsx";
import { Tiers } from "./tiers.tsx";

const Errata = lazy(() => import("./errata.tsx").then((module) => ({ default: module.Errata })));

const text = kitsWords.contents;

/** What was in a kit: its lines, the field that takes the next one, and the facts about the kit. */
export function ContentsPage({ kit }: Readonly<{ kit: Kit }>) {
  const view = useMemo(() => contentsView(kit), [kit]);
  const [open, setOpen] = useState<string | null>(null);
  return (
    <KitFrame kit={kit} tab="contents" lead={view.lead} leadMore={view.leadMore}>
      <h2 className="visually-hidden">{text.list}</h2>
      <ol className={styles.lines}>
        {view.rows.map((row) => (
          <LineItem
            key={row.line.id}
            kit={kit}
            row={row}
            open={open === row.line.id}
            onToggle={() => setOpen(open === row.line.id ? null : row.line.id)}
          />
        ))}
      </ol>
      <div className="screen-only">
        <Entry kit={kit} />
      </div>
      <About kit={kit} />
      <Tiers kit={kit} />
      <Suspense fallback={null}>
        <Errata kit={kit} />
      </Suspense>
    </KitFrame>
  );
}
