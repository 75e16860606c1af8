import { setKeysOn, useKeysOn } from "../app/keys.ts";
import { Section, Tick } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";

const words = keepSafeWords.keys;

/** Single-key shortcuts on or off, kept on this device. */
export function Keys() {
  const on = useKeysOn();
  return (
    <Section title={words.title}>
      <Tick label={words.tick} more={words.more} value={on} onValue={setKeysOn} />
      <p className={styles.text}>{words.chord}</p>
    </Section>
  );
}
