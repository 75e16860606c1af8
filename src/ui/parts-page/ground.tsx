import { Section } from "../parts/index.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

/** The tokens of colour, by their names. */
export function Ground() {
  return (
    <Section title={sheet.ground.title} note={sheet.ground.note}>
      <ul className={styles.tokens}>
        {Object.entries(sheet.ground.names).map(([token, name]) => (
          <li key={token}>
            <span className={styles.token} style={{ background: `var(--${token})` }} />
            {name}
          </li>
        ))}
      </ul>
    </Section>
  );
}
