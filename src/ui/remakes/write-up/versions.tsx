import type { Remake } from "../../../engine/workbook/index.ts";
import { bytesOf } from "../../../engine/writeup/index.ts";
import { Section, Why } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { keyed } from "../view/lists.ts";
import styles from "./write-up.module.css";

const words = remakeWords.writeUp;

/** Versions that were published, as they were then; the newest first. */
export function Versions({ remake }: Readonly<{ remake: Remake }>) {
  const versions = keyed(remake.published).toReversed();
  return (
    <Section title={words.versions}>
      {versions.length === 0 && <p className={styles.hint}>{words.noVersions}</p>}
      <ul>
        {versions.map(({ key, entry }) => (
          <li key={key} className={styles.version}>
            <p>
              {words.version(entry.at ? format.date(entry.at) : "—")}{" "}
              <span className={styles.hint}>
                {words.versionSize(format.count(bytesOf(entry.text ?? "")))}
              </span>
            </p>
            <Why about={words.version(entry.at ? format.date(entry.at) : "—")} label={words.show}>
              <pre className={styles.text}>{entry.text}</pre>
            </Why>
          </li>
        ))}
      </ul>
    </Section>
  );
}
