import entry from "../kits/contents/entry.module.css";
import type { EntryView } from "../kits/view/entry.ts";
import { Swatch } from "../swatch/index.ts";

/** What is being written, drawn as it is understood so far. */
export function Drawn({ view }: Readonly<{ view: EntryView }>) {
  return (
    <figure className={entry.drawn}>
      <Swatch item={{ id: view.supply.name, supply: view.supply }} width={200} height={132} />
      <figcaption className={entry.fact}>
        <strong className={entry.made}>{view.supply.name}</strong>
        {view.caption}
      </figcaption>
    </figure>
  );
}
