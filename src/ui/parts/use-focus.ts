import { type RefObject, useEffect, useRef } from "react";

/** For the button that opens a form: it takes the focus back once the form is closed. */
export function useFocusBack(isOpen: boolean): RefObject<HTMLButtonElement | null> {
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(isOpen);
  useEffect(() => {
    if (wasOpen.current && !isOpen) button.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  return button;
}

/** For a form that was asked for: its first field takes the focus when it opens. */
export function useFirstField(isAsked = true): RefObject<HTMLDivElement | null> {
  const form = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isAsked) form.current?.querySelector("input")?.focus();
  }, [isAsked]);
  return form;
}
