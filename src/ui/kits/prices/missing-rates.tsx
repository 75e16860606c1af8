import type { Fault as Missing } from "../../../engine/record/index.ts";
import { AskRates } from "../../markets/asked-in-place.tsx";
import { Fault } from "../../parts/index.ts";
import { faultIn } from "../../words/faults.ts";
import { kitsWords } from "../../words/kits.ts";

const text = kitsWords.prices;

const sentence = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;

type Props = Readonly<{ faults: readonly Missing[]; day: string | null | undefined }>;

/** Which rates are missing, and the way to put them in. */
export function MissingRates({ faults, day }: Props) {
  if (faults.length === 0) return null;
  return (
    <>
      <Fault title={text.missingTitle}>
        <ul>
          {faults.map(faultIn).map(({ problem, remedy }) => (
            <li key={problem}>
              {sentence(problem)} {sentence(remedy)}
            </li>
          ))}
        </ul>
      </Fault>
      <AskRates day={day} />
    </>
  );
}
