import type { Fault as Missing } from "../../../engine/record/index.ts";
import { ButtonLink, Fault } from "../../parts/index.ts";
import { faultIn } from "../../words/faults.ts";
import { kitsWords } from "../../words/kits.ts";

const text = kitsWords.prices;

const sentence = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;

/** Which rates are missing, and the way to put them in. */
export function MissingRates({ faults }: Readonly<{ faults: readonly Missing[] }>) {
  if (faults.length === 0) return null;
  return (
    <Fault
      title={text.missingTitle}
      acts={<ButtonLink to={{ name: "markets" }}>{text.toMarkets}</ButtonLink>}
    >
      <ul>
        {faults.map(faultIn).map(({ problem, remedy }) => (
          <li key={problem}>
            {sentence(problem)} {sentence(remedy)}
          </li>
        ))}
      </ul>
    </Fault>
  );
}
