import { type FormEvent, useRef } from "react";

/**
 * What a form does on Enter. Enter comes before a field is left, and many are read only then: the field is told
 * that it is left, without losing the focus, and the act follows with what was read. While it is being done,
 * another Enter does nothing.
 */
export function useSubmit(act: () => Promise<void>): (event: FormEvent) => void {
  const latest = useRef(act);
  const isBusy = useRef(false);
  latest.current = act;
  const doIt = async () => {
    if (isBusy.current) return;
    isBusy.current = true;
    await latest.current().finally(() => {
      isBusy.current = false;
    });
  };
  return (event) => {
    event.preventDefault();
    document.activeElement?.dispatchEvent(new FocusEvent("focusout", { bubbles: true }));
    setTimeout(() => void doIt(), 0); // the newest act, once what was read is in it
  };
}
