import { chosenLocale, keepLocale, language } from "../../store/index.ts";
import { setKeysOn, useKeysOn } from "../app/keys.ts";
import { allLanguages, speak } from "../app/languages.ts";
import { Choice, Section, Select, Tick } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { localeOptions } from "./view/device.ts";

const words = keepSafeWords.device;

const options = allLanguages.map(({ code, name }) => ({
  value: code,
  label: <span lang={code}>{name}</span>,
}));

/** Another way of writing numbers draws the page anew, as another language does. */
function write(locale: string): void {
  if (keepLocale(locale === "" ? null : locale)) location.reload();
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
          onValue={speak}
        />
        <Select
          label={words.numbers}
          hint={words.numbersHint}
          value={chosen ?? ""}
          options={localeOptions(chosen)}
          onValue={write}
        />
        <Tick label={words.keys} more={words.keysMore} value={on} onValue={setKeysOn} />
        <p className={styles.text}>{words.chord}</p>
      </div>
    </Section>
  );
}
