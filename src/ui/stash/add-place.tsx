import { useBook } from "../../store/index.ts";
import { Chooser } from "../parts/index.ts";
import { stashWords } from "../words/stash.ts";
import { placeOptions } from "./view/options.ts";

const words = stashWords.adding;

type Props = Readonly<{ place: string | null; onPlace: (place: string | null) => void }>;

/** Where what is being added lives: said once for a whole drawer. */
export function AddPlace({ place, onPlace }: Props) {
  const stash = useBook((state) => state.book.stash);
  return (
    <Chooser
      label={words.place}
      hint={words.placeHint}
      value={place}
      options={placeOptions(stash ?? [])}
      takesNew
      onValue={onPlace}
    />
  );
}
