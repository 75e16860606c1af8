import { languages } from "../../engine/record/index.ts";
import { chosenLocale, keepLanguage, keepLocale, language } from "../../store/index.ts";
import { setKeysOn, useKeysOn } from "../app/keys.ts";
import { Choice, Section, Select, Tick } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { languageNames, localeOptions } from "./view/device.ts";

const words = keepSafeWords.device;

const options = languages.map((value) => ({
  value,
  label: <span lang={value}>{languageNames[value]}</span>,
}));

/**
 * Words are chosen before the page is drawn, so another language or locale draws it anew. Nothing is lost: each act
 * is kept as it is done.
 */
function startAnew(isKept: boolean): void {
  if (isKept) location.reload();
}

/** What only this device is set to: the language of words, how numbers and dates are written, single keys. */
export function Device() {
  const on = useKeysOn();
  const chosen = chosenLocale();
  return (
    <Section title={words.title}>
      <div className={styles.device}>
        <Choice
          label={words.language}
          hint={words.languageHint}
          value={language}
          options={options}
          onValue={(wanted) => startAnew(keepLanguage(wanted))}
        />
        <Select
          label={words.numbers}
          hint={words.numbersHint}
          value={chosen ?? ""}
          options={localeOptions(chosen)}
          onValue={(wanted) => startAnew(keepLocale(wanted === "" ? null : wanted))}
        />
        <Tick label={words.keys} more={words.keysMore} value={on} onValue={setKeysOn} />
        <p className={styles.text}>{words.chord}</p>
      </div>
    </Section>
  );
}
