import { type LineMatch, reasonLine, verdictWords } from "../match/index.ts";
import type { Line } from "../price/index.ts";
import type { Section } from "./document.ts";
import { lines } from "./document.ts";
import type { Subject } from "./subject.ts";
import { supplyWords } from "./words.ts";

const lowerFirst = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);

/** Every stash item that plays a line's part: a person may mix two. */
function playersOf(subject: Subject, line: Line, match: LineMatch): string {
  const own = (subject.remake.picks ?? []).find((pick) => pick.line === line.id && pick.by === "person");
  const uses = match.pick?.by === "person" ? (own?.uses ?? []) : [];
  const mixed = uses.length > 1 ? uses.map(({ stash }) => subject.item(stash)?.supply.name ?? "") : [];
  if (mixed.length > 0) return mixed.join(" with ");
  const item = subject.item(match.pick?.stash);
  return item ? supplyWords(item.supply) : "";
}

/** Why it is as near as it is, and what the person wrote of the pick. */
function noteOn(subject: Subject, line: Line, match: LineMatch): string {
  const { pick } = match;
  const item = subject.item(pick?.stash);
  const candidate = match.candidates.find(({ stash }) => stash === pick?.stash);
  const own = (subject.remake.picks ?? []).find((entry) => entry.line === line.id)?.note ?? "";
  // That it is the same is said already by how near it is.
  const isTold = pick?.verdict === "same" || pick?.verdict === "twin";
  const why = item && candidate && !isTold ? reasonLine(line.supply, item, candidate) : "";
  const resort = pick?.lastResort ? "nothing else would do, so the one I was sent" : "";
  return [why, resort, own]
    .filter((text) => text !== "")
    .map((text) => lowerFirst(text.replace(/\.$/, "")))
    .join("; ");
}

function standInRow(subject: Subject, line: Line, number: number): readonly string[] {
  const match = subject.match.lines.find((candidate) => candidate.line === line.id);
  const qty = (line.qty ?? 1) > 1 ? `${line.qty} × ` : "";
  const what = `${number}. ${qty}${supplyWords(line.supply)}`;
  if (!match?.pick) return [what, "nothing close on my shelves", "", ""];
  const nearness = `${Math.round(match.pick.likeness * 100)} of 100, ${verdictWords(match.pick.verdict)}`;
  return [what, playersOf(subject, line, match), nearness, noteOn(subject, line, match)];
}

/** What was in the kit, and what stood in for each item and why. */
export const standInSection = (subject: Subject): Section => ({
  id: "stand-ins",
  title: "What was in it, and what stood in",
  keep: 90,
  blocks: [
    {
      kind: "table",
      head: ["In the kit", "From my shelves", "How near", "Why"],
      inLine: [],
      rows: (subject.kit.lines ?? []).map((line, i) => standInRow(subject, line, i + 1)),
      numeric: [],
    },
  ],
});

/** How many of the kit's lines have a stand-in. */
export const filledLines = ({ match }: Subject): number =>
  match.lines.filter(({ pick }) => pick !== null).length;

/** Basics added, things shown only, and rules bent: said aloud. */
export function besideSection(subject: Subject): Section {
  const { remake } = subject;
  const named = (stash: string | null | undefined) =>
    subject.item(stash)?.supply.name ?? "something no longer here";
  return {
    id: "beside",
    title: "Beside the kit",
    keep: 60,
    blocks: [
      lines(
        ...(remake.essentials ?? []).map(
          ({ stash, role }) => `Basics added: ${named(stash)}${role ? ` (to ${role})` : ""}`,
        ),
        ...(remake.shownOnly ?? []).map(
          ({ stash, why }) => `Shown only, not used in the piece: ${named(stash)}${why ? `. ${why}` : ""}`,
        ),
        ...(remake.bends ?? []).map(({ rule, why }) => `Rule ${rule ?? ""} bent${why ? `: ${why}` : ""}`),
      ),
    ],
  };
}
