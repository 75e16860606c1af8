import { type LineMatch, reasonLine, verdictWords } from "../match/index.ts";
import type { Line } from "../price/index.ts";
import { factsOf, type Supply } from "../supply/index.ts";
import type { Section } from "./document.ts";
import { lines } from "./document.ts";
import type { Subject } from "./subject.ts";

const lowerFirst = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);

/** A supply with what is known of it: "Gouache, moss (tube, 15 ml)". */
function supplyWords({ words, language }: Subject, supply: Supply): string {
  const facts = factsOf(supply, (value) => words.amount(String(value)), language);
  return facts.length > 0 ? `${supply.name} (${facts.join(", ")})` : supply.name;
}

/** Every stash item that plays a line's part: a person may mix two. */
function playersOf(subject: Subject, line: Line, match: LineMatch): string {
  const own = (subject.remake.picks ?? []).find((pick) => pick.line === line.id && pick.by === "person");
  const uses = match.pick?.by === "person" ? (own?.uses ?? []) : [];
  const mixed = uses.length > 1 ? uses.map(({ stash }) => subject.item(stash)?.supply.name ?? "") : [];
  if (mixed.length > 0) return subject.words.mixed(mixed);
  const item = subject.item(match.pick?.stash);
  return item ? supplyWords(subject, item.supply) : "";
}

/** Why it is as near as it is, and what the person wrote of the pick. */
function noteOn(subject: Subject, line: Line, match: LineMatch): string {
  const { pick } = match;
  const item = subject.item(pick?.stash);
  const candidate = match.candidates.find(({ stash }) => stash === pick?.stash);
  const own = (subject.remake.picks ?? []).find((entry) => entry.line === line.id)?.note ?? "";
  // That it is the same is said already by how near it is.
  const isTold = pick?.verdict === "same" || pick?.verdict === "twin";
  const why = item && candidate && !isTold ? reasonLine(line.supply, item, candidate, subject.language) : "";
  const resort = pick?.lastResort ? subject.words.lastResort : "";
  return [why, resort, own]
    .filter((text) => text !== "")
    .map((text) => lowerFirst(text.replace(/\.$/, "")))
    .join("; ");
}

function standInRow(subject: Subject, line: Line, number: number): readonly string[] {
  const { words, language } = subject;
  const match = subject.match.lines.find((candidate) => candidate.line === line.id);
  const qty = (line.qty ?? 1) > 1 ? `${line.qty} × ` : "";
  const what = `${number}. ${qty}${supplyWords(subject, line.supply)}`;
  if (!match?.pick) {
    const isLeftOut = (subject.remake.picks ?? []).some(
      (pick) => pick.line === line.id && pick.by === "person" && (pick.uses ?? []).length === 0,
    );
    return [what, isLeftOut ? words.leftOpen : words.nothingClose, "", ""];
  }
  const { likeness, verdict } = match.pick;
  // Below what counts as near only a person picks: then it is their word that counts.
  const near = verdict === "gap" ? words.ownPick : verdictWords(verdict, language);
  const nearness = words.near(Math.round(likeness * 100), near);
  return [what, playersOf(subject, line, match), nearness, noteOn(subject, line, match)];
}

/** What was in the kit, and what stood in for each item and why. */
export const standInSection = (subject: Subject): Section => ({
  id: "stand-ins",
  title: subject.words.standIns,
  keep: 90,
  blocks: [
    {
      kind: "table",
      head: subject.words.standInHead,
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
  const { remake, words } = subject;
  const named = (stash: string | null | undefined) => subject.item(stash)?.supply.name ?? words.gone;
  return {
    id: "beside",
    title: words.beside,
    keep: 60,
    blocks: [
      lines(
        ...(remake.essentials ?? []).map(({ stash, role }) => words.basic(named(stash), role ?? "")),
        ...(remake.shownOnly ?? []).map(({ stash, why }) => words.shown(named(stash), why ?? "")),
        ...(remake.bends ?? []).map(({ rule, why }) => words.bent(rule ?? null, why ?? "")),
      ),
    ],
  };
}
