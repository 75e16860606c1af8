import { editHome, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Section, Select, Tick } from "../parts/index.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";

const words = marketsWords.home;

/** Where the person lives, and for which markets worth is counted. */
export function Home() {
  const markets = useBook((state) => state.book.markets) ?? [];
  const home = useBook((state) => state.book.home);
  if (markets.length === 0) return null;
  const reported = home?.reportMarkets ?? [];
  const tick = (id: string, on: boolean) => {
    const next = markets
      .map((market) => market.id)
      .filter((one) => (one === id ? on : reported.includes(one)));
    void doAct(editHome(["reportMarkets"], next), null);
  };
  return (
    <Section title={words.title}>
      <div className={styles.home}>
        <Select
          label={words.market}
          value={home?.market ?? ""}
          options={[
            { value: "", label: words.nowhere },
            ...markets.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onValue={(id) => void doAct(editHome(["market"], id === "" ? undefined : id), null)}
        />
        <fieldset>
          <legend className={styles.fact}>{words.report}</legend>
          <div className={styles.ticks}>
            {markets.map(({ id, name }) => (
              <Tick key={id} label={name} value={reported.includes(id)} onValue={(on) => tick(id, on)} />
            ))}
          </div>
          <p className={styles.fact}>{words.hint}</p>
        </fieldset>
      </div>
    </Section>
  );
}
