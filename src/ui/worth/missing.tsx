import type { Kit } from "../../engine/worth/index.ts";
import { editKit } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { AskMarket, AskRates } from "../markets/asked-in-place.tsx";
import { ButtonLink, DateField, Empty } from "../parts/index.ts";
import { faultIn } from "../words/faults.ts";
import { worthWords } from "../words/worth.ts";
import type { Worth } from "./view/scene.ts";
import styles from "./worth.module.css";

const words = worthWords.missing;

type Props = Readonly<{ kit: Kit; worth: Exclude<Worth, { kind: "ready" }> }>;

/** What keeps the worth from being counted, with the way to put it right at hand. */
export function Missing({ kit, worth }: Props) {
  return (
    <div className={styles.missing}>
      <What kit={kit} worth={worth} />
    </div>
  );
}

function What({ kit, worth }: Props) {
  switch (worth.kind) {
    case "no-lines":
      return (
        <Empty
          title={words.noLines}
          act={<ButtonLink to={{ name: "kit", id: kit.id, tab: "contents" }}>{words.toContents}</ButtonLink>}
        >
          {words.noLinesText}
        </Empty>
      );
    case "no-markets":
      return (
        <Empty title={words.noMarkets} act={<AskMarket />}>
          {words.noMarketsText}
        </Empty>
      );
    case "no-day":
      return (
        <Empty title={words.noDay} act={<Day kit={kit} />}>
          {words.noDayText}
        </Empty>
      );
    case "no-rates":
      return (
        <Empty title={words.rates} act={<AskRates day={kit.valuedOn} />}>
          <p>{words.ratesText}</p>
          <ul className={styles.faults}>
            {worth.faults.map(faultIn).map(({ place, problem, remedy }) => (
              <li key={`${place} ${problem}`}>{words.fault(sentence(problem), remedy)}</li>
            ))}
          </ul>
        </Empty>
      );
  }
}

const sentence = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function Day({ kit }: Readonly<{ kit: Kit }>) {
  const keep = (day: string | null) => {
    if (day !== null) void doAct(editKit(kit, ["valuedOn"], day), null);
  };
  return (
    <div className={styles.day}>
      <DateField label={words.day} value={null} onValue={keep} />
    </div>
  );
}
