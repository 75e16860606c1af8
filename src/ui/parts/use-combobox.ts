import { type KeyboardEvent, useId, useState } from "react";

type Options = Readonly<{
  count: number;
  onPick: (index: number) => void;
  onClose?: () => void;
  /** Escape closes the list alone: what was typed is worth keeping. */
  keepsText?: boolean;
}>;

/** The index a key moves to, round the ends; null for a key that moves nothing. */
function movedTo(key: string, active: number, count: number): number | null {
  if (count === 0) return null;
  if (key === "ArrowDown") return (active + 1) % count;
  if (key === "ArrowUp") return active <= 0 ? count - 1 : active - 1;
  if (key === "PageDown") return Math.min(count - 1, active + 8);
  if (key === "PageUp") return Math.max(0, active - 8);
  return null;
}

/**
 * The keyboard and the roles of an editable combobox with a list box: the focus stays in the field, the arrow
 * keys move through the list, Enter takes, Escape closes.
 * @see WAI-ARIA Authoring Practices, Combobox Pattern, "list autocomplete with manual selection"
 */
export function useCombobox({ count, onPick, onClose, keepsText = false }: Options) {
  const listId = useId();
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const optionId = (index: number) => `${listId}-${index}`;
  const hide = () => {
    setOpen(false);
    setActive(-1);
  };
  const close = () => {
    hide();
    onClose?.();
  };
  const pick = (index: number) => {
    close();
    onPick(index);
  };
  const move = (to: number) => {
    setOpen(true);
    setActive(to);
    document.getElementById(optionId(to))?.scrollIntoView({ block: "nearest" });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const to = movedTo(event.key, open ? active : -1, count);
    if (to !== null) {
      event.preventDefault();
      move(to);
    } else if (event.key === "Enter" && open && active >= 0 && active < count) {
      event.preventDefault();
      pick(active);
    } else if (event.key === "Escape" && open) {
      event.preventDefault();
      event.stopPropagation(); // an enclosing dialog stays open
      if (keepsText) hide();
      else close();
    }
  };
  return {
    open,
    active,
    close,
    show: (first = -1) => {
      setOpen(true);
      setActive(first);
    },
    inputProps: {
      role: "combobox",
      "aria-autocomplete": "list",
      "aria-expanded": open,
      "aria-controls": listId,
      "aria-activedescendant": open && active >= 0 && active < count ? optionId(active) : undefined,
      autoComplete: "off",
      onKeyDown,
    } as const,
    listProps: { id: listId, role: "listbox" } as const,
    optionProps: (index: number) =>
      ({
        id: optionId(index),
        role: "option",
        "aria-selected": index === active,
        onPointerDown: (event: { preventDefault: () => void }) => event.preventDefault(), // keeps the focus in the field
        onClick: () => pick(index),
        onPointerMove: () => active !== index && setActive(index),
      }) as const,
  };
}
