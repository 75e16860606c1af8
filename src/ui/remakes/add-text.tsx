import { type ReactNode, useRef, useState } from "react";
import { Button, Field } from "../parts/index.ts";
import styles from "./entries.module.css";

type Props = Readonly<{ label: string; hint?: ReactNode; act: string; onAdd: (text: string) => void }>;

/** One line to add to a list, with Enter or the button; the field stays at hand for the next. */
export function AddText({ label, hint, act, onAdd }: Props) {
  const [text, setText] = useState("");
  const field = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const add = () => {
    field.current?.focus();
    if (text.trim() === "") return;
    onAdd(text.trim());
    setText("");
  };
  return (
    <div className={styles.add}>
      <Field label={label} wraps hint={hint} value={text} onValue={setText} onEnter={add} inputRef={field} />
      <Button onClick={add}>{act}</Button>
    </div>
  );
}
