import type { Span } from "./phrase.ts";

/** A stretch of the line that was understood: what it says, in words, and the field of the line it fills. */
export type Piece = Readonly<Span & { text: string; reads: string; field: string }>;

/** A piece with the value it gives its field: lists (tips, pigments) are joined from several. */
export type Found = Readonly<Piece & { value: unknown }>;

export const found = (match: RegExpExecArray, field: string, value: unknown, reads: string): Found => ({
  start: match.index,
  end: match.index + match[0].length,
  text: match[0],
  field,
  value,
  reads,
});

export const traitField = (trait: string): string => `traits.${trait}`;

/** Traits that hold a list: several words of a line may each add to one. */
export const isList = (field: string): boolean => field === "traits.tips" || field === "traits.pigments";
