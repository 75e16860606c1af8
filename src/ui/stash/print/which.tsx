import { Choice } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { printWords as words } from "../../words/print.ts";
import type { Things, Which } from "./use-things.ts";

type Props = Readonly<{ things: Things; blank?: boolean }>;

/** What was chosen, what was found, all things, or blank cells; nothing where there is no choice. */
export function WhichThings({ things, blank = false }: Props) {
  const { all, found, chosen, which, setWhich } = things;
  const options: Readonly<{ value: Which; label: string }>[] = [
    { value: "all", label: words.all(format.count(all.length), all.length === 1) },
  ];
  if (found)
    options.unshift({ value: "found", label: words.found(format.count(found.length), found.length === 1) });
  if (chosen)
    options.unshift({
      value: "chosen",
      label: words.chosen(format.count(chosen.length), chosen.length === 1),
    });
  if (blank) options.push({ value: "blank", label: words.blank });
  if (options.length < 2) return null;
  return <Choice label={words.which} value={which} options={options} onValue={setWhich} />;
}
