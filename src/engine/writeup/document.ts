import type { Language } from "../record/index.ts";

/**
 * One part of a section: plain lines, or a table whose rows also read as lines ("Gouache, moss: list 59.54").
 * `inLine`: what a column's cell is led by in a line, where that is not its head.
 */
export type Block =
  | Readonly<{ kind: "lines"; lines: readonly string[] }>
  | Readonly<{
      kind: "table";
      head: readonly string[];
      rows: readonly (readonly string[])[];
      numeric: readonly number[];
      inLine?: readonly string[];
    }>;

/**
 * A section of the write-up. Where a limit is tight, the one with the lowest `keep` goes first.
 * `verbatim` lines (chapters, tags) hold signs that elsewhere would be taken for links or tags.
 * `called`: its name where it is spoken of, if it has no title to print.
 */
export type Section = Readonly<{
  id: string;
  title: string | null;
  called?: string;
  keep: number;
  blocks: readonly Block[];
  verbatim?: boolean;
}>;

/** A write-up before it is rendered: an opening line of at most 100 characters, then sections in order. */
export type Writeup = Readonly<{ language: Language; opening: string; sections: readonly Section[] }>;

export const lines = (...texts: readonly (string | null | undefined | false)[]): Block => ({
  kind: "lines",
  lines: texts.filter((text): text is string => typeof text === "string" && text !== ""),
});

/** What a section is called. */
export const nameOf = ({ title, called, id }: Section): string => title ?? called ?? id;

/** Whether a section has anything to say. */
export const isFull = (section: Section): boolean =>
  section.blocks.some((block) => (block.kind === "lines" ? block.lines.length > 0 : block.rows.length > 0));
