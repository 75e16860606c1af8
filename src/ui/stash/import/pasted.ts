import { create } from "zustand";
import { go } from "../../app/navigate.ts";
import { otherAddress } from "../item-link.tsx";

/** A table that was pasted where one thing is written, on its way to be read as a list. */
const usePasted = create<Readonly<{ text: string | null }>>(() => ({ text: null }));

/** Whether a text is cells copied from a spreadsheet: tabs between them, and more lines than one. */
export const isTable = (text: string): boolean =>
  text.split(/\r\n|\n|\r/).filter((line) => line.includes("\t")).length > 1;

/** Takes a pasted table to where lists are brought in. */
export function bringPasted(text: string): void {
  usePasted.setState({ text });
  go(otherAddress("bring", "list"));
}

/** The pasted table, once: whoever takes it has it. */
export function takePasted(): string | null {
  const { text } = usePasted.getState();
  usePasted.setState({ text: null });
  return text;
}
