import { foldText } from "./fold.ts";
import { keyOf } from "./identity.ts";
import { file } from "./multimap.ts";
import type { Kinship } from "./schema.ts";

type Side = Readonly<{ maker: string; line: string; code: string }>;
type Kind = "twin" | "same-colour";

/** A product that need not be on any shelf: a line and, of it, one code or one name. */
export type Place = Readonly<{ line: string; by: "code" | "name"; value: string }>;

/** One way out of a place: to which line, and to which code there when the kinship names single products. */
type Link = Readonly<{ kind: Kind; line: string; by: "code" | "name"; code: string | null }>;

/** Where the kinships of a workbook lead, either way. */
export type Links = Readonly<{ from: (place: Place, kinds: readonly Kind[]) => readonly Place[] }>;

/** @returns null where neither maker nor line is known: a code of nobody's line names no product */
export const lineKey = (maker: string, line: string): string | null =>
  maker || line ? keyOf(maker, line) : null;

const foldSide = (side: Kinship["a"]): Side => ({
  maker: foldText(side?.maker),
  line: foldText(side?.line),
  code: foldText(side?.code),
});

const atCode = (line: string, code: string) => keyOf("code", line, code);
const wholeLine = (by: string, line: string) => keyOf("line", by, line);

/** Files one direction of a kinship. A side without a code takes the other's: 12 there is 12 here. */
function fileOneWay(map: Map<string, Link[]>, kind: Kind, by: "code" | "name", from: Side, to: Side): void {
  const [here, there] = [lineKey(from.maker, from.line), lineKey(to.maker, to.line)];
  if (here === null || there === null) return;
  if (from.code || to.code) {
    const link = { kind, line: there, by: "code", code: to.code || from.code } as const;
    file(map, atCode(here, from.code || to.code), link);
  } else file(map, wholeLine(by, here), { kind, line: there, by, code: null });
}

/** Indexes kinships by where they start, so that following them costs the same with one or a thousand. */
export function linksOf(kinships: readonly Kinship[]): Links {
  const map = new Map<string, Link[]>();
  for (const { kind, a, b, by } of kinships) {
    if (kind !== "twin" && kind !== "same-colour") continue;
    fileOneWay(map, kind, by ?? "code", foldSide(a), foldSide(b));
    fileOneWay(map, kind, by ?? "code", foldSide(b), foldSide(a));
  }
  return {
    from: ({ line, by, value }, kinds) => {
      const single = by === "code" ? (map.get(atCode(line, value)) ?? []) : [];
      const links = [...single, ...(map.get(wholeLine(by, line)) ?? [])];
      return links
        .filter((link) => kinds.includes(link.kind))
        .map((link) => ({ line: link.line, by: link.by, value: link.code ?? value }));
    },
  };
}
