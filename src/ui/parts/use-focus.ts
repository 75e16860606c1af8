import { type RefObject, useEffect, useRef } from "react";

/** Whether what had the focus is gone from the page: then it can be taken without stealing it from anyone. */
export const isFocusLost = (): boolean => document.activeElement === document.body;

/** For the button that opens a form: it takes the focus back once the form is closed, from whoever is still there. */
export function useFocusBack(isOpen: boolean): RefObject<HTMLButtonElement | null> {
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(isOpen);
  useEffect(() => {
    if (wasOpen.current && !isOpen && isFocusLost()) button.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  return button;
}

/**
 * For a form that was asked for: its first field takes the focus when it opens.
 * @param asked how often it was asked for; each time counts
 */
export function useFirstField<Form extends HTMLElement>(asked = 1): RefObject<Form | null> {
  const form = useRef<Form>(null);
  useEffect(() => {
    if (asked > 0) form.current?.querySelector<HTMLElement>("input, select, textarea")?.focus();
  }, [asked]);
  return form;
}
