import { Section } from "../parts/index.ts";
import { Pair, Swatch } from "../swatch/index.ts";
import { examples, pairExamples } from "./examples.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

const sizes = [
  [96, 64],
  [56, 36],
  [36, 24],
] as const;

/** Every family at four sizes. */
export function Swatches() {
  return (
    <Section title={sheet.swatches.title} note={sheet.swatches.note}>
      <ul className={styles.swatches}>
        {examples.map((supply) => (
          <li key={supply.name}>
            <Swatch item={{ id: supply.name, supply }} width={240} height={160} />
            <div className={styles.small}>
              {sizes.map(([width, height]) => (
                <Swatch key={width} item={{ id: supply.name, supply }} width={width} height={height} />
              ))}
            </div>
            {supply.name}
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** A stroke, a wash and a grain as large as a card shows them. */
export function LargeSwatches() {
  const large = examples.filter(({ name }) => ["Gouache", "Watercolour", "Soft pastel"].includes(name));
  return (
    <Section title={sheet.sizes.title} note={sheet.sizes.note}>
      <ul className={styles.large}>
        {large.map((supply) => (
          <li key={supply.name}>
            <Swatch item={{ id: supply.name, supply }} width={600} height={150} />
            {supply.name}
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** Kit and stand-in as one swatch. */
export function Pairs() {
  return (
    <Section title={sheet.pairs.title} note={sheet.pairs.note}>
      <ul className={styles.swatches}>
        {pairExamples.map(({ kit, standIn }) => (
          <li key={kit.name}>
            <Pair
              kit={{ id: kit.name, supply: kit }}
              standIn={standIn && { id: standIn.name, supply: standIn }}
              width={240}
              height={76}
            />
            <p className={styles.names}>
              <span>{kit.name}</span>
              <span className={styles.fact}>{standIn?.name ?? sheet.pairs.gap}</span>
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
