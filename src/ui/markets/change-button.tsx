import { Button } from "../parts/index.ts";
import { marketsWords as words } from "../words/markets.ts";

type Props = Readonly<{ open: boolean; about: string; onToggle: () => void }>;

/** Opens and closes the fields of one row. */
export function ChangeButton({ open, about, onToggle }: Props) {
  return (
    <Button kind="quiet" aria-expanded={open} onClick={onToggle}>
      {open ? words.close : words.change}
      <span className="visually-hidden">{words.about(about)}</span>
    </Button>
  );
}
