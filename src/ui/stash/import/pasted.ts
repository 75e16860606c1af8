import { create } from "zustand";
import { go, withAddressValue } from "../../app/navigate.ts";

/** A table that was pasted where one thing is written, on its way to be read as a list. */
const usePasted = create<Readonly<{ text: string | null }>>(() => ({ text: null }));

/** The place where lists are brought in. */
export const bringAddress = (): string => withAddressValue("bring", "list");

/** Whether a text is cells copied from a spreadsheet: tabs between them, and more lines than one. */
export const isTable = (text: string): boolean =>
  text.split(/\r\n|\n|\r/).filter((line) => line.includes("\t")).length > 1;

/** Takes a pasted table to where lists are brought in. */
export function bringPasted(text: string): void {
  usePasted.setState({ text });
  go(bringAddress());
}

/** The pasted table, once: whoever takes it has it. */
export function takePasted(): string | null {
  const { text } = usePasted.getState();
  usePasted.setState({ text: null });
  return text;
}
