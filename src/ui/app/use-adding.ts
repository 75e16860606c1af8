import { useCallback, useMemo, useState } from "react";
import { useFocusBack } from "../parts/use-focus.ts";
import { useOffer } from "./acts.ts";

/**
 * The form for a new thing, asked for with its button or by name from the search field; once closed, the focus
 * is back at the button.
 * @param name what the search field calls it; null while it cannot be done
 * @param isOpen whether it is asked for by the address already
 */
export function useAdding(name: string | null, isOpen = false) {
  const [asked, setAsked] = useState(isOpen ? 1 : 0);
  const open = useCallback(() => setAsked((before) => before + 1), []);
  const close = useCallback(() => setAsked(0), []);
  useOffer(useMemo(() => (name === null ? [] : [{ name, run: open }]), [name, open]));
  return { asked, open, close, button: useFocusBack(asked > 0) } as const;
}
