import { Section } from "../parts/index.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

/** The sizes of type. */
export function TypeSheet() {
  return (
    <Section title={sheet.type.title} note={sheet.type.note}>
      <dl className={styles.type}>
        {Object.entries(sheet.type.lines).map(([token, [size, text]]) => (
          <div key={token}>
            <dt>{size}</dt>
            <dd style={{ font: `var(--${token})` }}>{text}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}
