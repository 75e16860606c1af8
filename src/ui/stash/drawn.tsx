import type { EntryView } from "../kits/view/entry.ts";
import { Swatch } from "../swatch/index.ts";
import styles from "./add.module.css";

/** What is being written, drawn as it is understood so far. */
export function Drawn({ view }: Readonly<{ view: EntryView }>) {
  return (
    <figure className={styles.drawn}>
      <Swatch item={{ id: view.supply.name, supply: view.supply }} width={200} height={132} />
      <figcaption className={styles.fact}>
        <strong className={styles.made}>{view.supply.name}</strong>
        {view.caption}
      </figcaption>
    </figure>
  );
}
