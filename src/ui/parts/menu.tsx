import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from "react";
import { besideButton } from "./beside-button.ts";
import { Button, type ButtonKind } from "./button.tsx";
import styles from "./menu.module.css";

export type MenuAct = Readonly<{ label: string; more?: string; onPick: () => void }>;

type Props = Readonly<{
  label: ReactNode;
  /** The whole name, where the label alone would not tell what the menu is for. */
  name?: string;
  kind?: ButtonKind;
  acts: readonly MenuAct[];
}>;

/**
 * Acts behind a button.
 * @see WAI-ARIA Authoring Practices, Menu Button Pattern
 */
export function Menu({ label, name, kind = "quiet", acts }: Props) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  const [place, setPlace] = useState({ left: 0, top: 0 });
  const items = () => [...(list.current?.querySelectorAll<HTMLElement>('[role="menuitem"]') ?? [])];
  const focus = (index: number) => items().at(index)?.focus();

  const onToggle = (isOpen: boolean) => {
    setOpen(isOpen);
    if (!isOpen || !list.current || !button.current) return;
    setPlace(besideButton(button.current.getBoundingClientRect(), list.current.getBoundingClientRect()));
    focus(0);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const at = items().indexOf(event.target as HTMLElement); // key events come from elements
    const to = { ArrowDown: (at + 1) % acts.length, ArrowUp: at - 1, Home: 0, End: -1 }[event.key];
    if (event.key === "Tab") list.current?.hidePopover();
    if (to === undefined) return;
    event.preventDefault();
    focus(to);
  };
  return (
    <>
      <Button
        ref={button}
        kind={kind}
        popoverTarget={id}
        aria-haspopup="menu"
        aria-expanded={open}
        aria-label={name}
        onKeyDown={(event) => {
          if (event.key !== "ArrowDown") return;
          event.preventDefault();
          list.current?.showPopover();
        }}
      >
        {label}
      </Button>
      <div
        ref={list}
        id={id}
        popover="auto"
        role="menu"
        aria-label={name ?? (typeof label === "string" ? label : undefined)}
        tabIndex={-1}
        className={styles.menu}
        style={place}
        onToggle={(event) => onToggle(event.newState === "open")}
        onKeyDown={onKeyDown}
      >
        {acts.map((act) => (
          <button
            key={act.label}
            type="button"
            role="menuitem"
            tabIndex={-1}
            className={styles.item}
            onClick={() => {
              list.current?.hidePopover();
              act.onPick();
            }}
          >
            {act.label}
            {act.more && <span className={styles.more}>{act.more}</span>}
          </button>
        ))}
      </div>
    </>
  );
}
