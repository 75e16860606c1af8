import { useEffect, useState } from "react";
import { askToKeep, type StorageHealth, storageHealth, useBook } from "../../store/index.ts";
import { Button, notify, Section } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { healthView } from "./view/health.ts";

const words = keepSafeWords.health;

/** Whether this browser will keep it all, and how much room there is, in plain words. */
export function Health() {
  const [health, setHealth] = useState<StorageHealth | null>(null);
  const savedAt = useBook((state) => state.saving.at);
  const look = () => storageHealth(navigator.storage).then(setHealth);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked at again whenever something was saved
  useEffect(() => void look(), [savedAt]);
  if (!health) return null;
  const { texts, canAsk } = healthView(health);
  const ask = async () => {
    notify((await askToKeep(navigator.storage)) ? words.granted : words.denied);
    await look();
  };
  return (
    <Section title={words.title}>
      {texts.map((text) => (
        <p key={text} className={styles.text}>
          {text}
        </p>
      ))}
      {canAsk && <Button onClick={() => void ask()}>{words.ask}</Button>}
    </Section>
  );
}
