import { Correct } from "../kits/contents/correct.tsx";
import type { EntryView, Fix } from "../kits/view/entry.ts";

type Props = Readonly<{
  view: EntryView | null;
  inHand: string | null;
  fixes: readonly Fix[];
  onFixes: (fixes: readonly Fix[]) => void;
}>;

/** The piece in hand with what else it could mean, or the one thing the line leaves to be asked. */
export function Asked({ view, inHand, fixes, onFixes }: Props) {
  const field = inHand ?? view?.asks ?? null;
  if (!view || !field) return null;
  return (
    <Correct
      key={field}
      supply={view.supply}
      read={view.read}
      field={field}
      onFix={(fix) => onFixes([...fixes.filter((other) => other.field !== fix.field), fix])}
    />
  );
}
