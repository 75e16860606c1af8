import { describe, expect, it } from "vitest";
import type { KitMatch } from "../../src/engine/match/index.ts";
import type { Remake } from "../../src/engine/workbook/index.ts";
import type { ActDraft } from "../../src/store/index.ts";
import { applyChanges } from "../../src/store/journal/index.ts";
import {
  clearAll,
  leaveOut,
  markGone,
  pickBending,
  pickFor,
  setNote,
  takeAll,
  tickFetched,
} from "../../src/ui/remakes/acts.ts";
import { fetchedIds, fetchView } from "../../src/ui/remakes/view/fetch.ts";
import { fewerHere } from "../../src/ui/remakes/view/how-many.ts";
import { outText, wayIn } from "../../src/ui/remakes/view/left-out.ts";
import { movedLines, tellOf } from "../../src/ui/remakes/view/moved.ts";
import { nextBest } from "../../src/ui/remakes/view/next-best.ts";
import { openedView, sumSentence } from "../../src/ui/remakes/view/opened.ts";
import { ownPick, type Subject, shelvesOf, solve, subjectOf } from "../../src/ui/remakes/view/solve.ts";
import { palettePicks, standInsView, type Way } from "../../src/ui/remakes/view/stand-ins.ts";
import { stashOptions } from "../../src/ui/remakes/view/stash-options.ts";
import { format } from "../../src/ui/words/index.ts";
import { named, sampleBook } from "./sample.ts";

// What the sentences say comes from the design (no outside source); every figure in them is worked out here
// once more from the match, whose own figures are checked against outside sources in tests/unit/match.
const book = sampleBook();

function subject(id: string): Subject {
  const found = subjectOf(book, id);
  if (!found) throw new Error(`no remake ${id}`);
  return found;
}

/** The subject after acts, one after another. */
const acted = (from: Subject, ...acts: readonly ((now: Subject) => ActDraft)[]): Subject =>
  acts.reduce((now, act) => {
    const done = applyChanges(now.book, act(now).changes);
    const next = done.ok ? subjectOf(done.value.book, now.remake.id) : null;
    if (!next) throw new Error("the act did not apply");
    return next;
  }, from);

const lineOf = ({ kit }: Subject, id: string) => named(kit.lines, id);
const viewOf = (of: Subject, way: Way = "nearest") => standInsView(of, solve(of), way);
const rowOf = (of: Subject, id: string) => {
  const row = viewOf(of).rows.find(({ line }) => line === id);
  if (!row) throw new Error(`no row ${id}`);
  return row;
};
const stashOf = (match: KitMatch, line: string) => match.lines.find((one) => one.line === line)?.pick?.stash;

const ebb = subject("rm-low-light");
const boat = subject("rm-boathouse");
const thaw = subject("rm-slow-thaw");

describe("the sentence that sums up", () => {
  it("says how many have a stand-in and names the gap", () => {
    const { lead, leadMore } = viewOf(ebb);
    expect(lead).toBe("Seven of eight have a stand-in.");
    expect(leadMore).toBe("Nothing close for the flat brush.");
  });
  it("says that all have one", () => expect(viewOf(thaw).lead).toBe("All nine have a stand-in."));
  it("tells what is left out on purpose from what is missing", () => {
    const left = acted(ebb, (now) => leaveOut(now.remake, lineOf(now, "l7")));
    expect(viewOf(left).leadMore).toBe("Left out on purpose: flat brush.");
    expect(rowOf(left, "l7")).toMatchObject({ state: "left-out", figure: null, standIn: null, isOwn: true });
  });
});

describe("a row", () => {
  it("gives the nearness as printed and the reason", () => {
    const match = solve(ebb);
    for (const row of viewOf(ebb).rows) {
      const pick = match.lines.find(({ line }) => line === row.line)?.pick;
      expect(row.figure).toBe(pick ? Math.round(pick.likeness * 100) : null);
      if (row.standIn) expect(row.standIn.reasons[0]).not.toBe("");
    }
  });
  it("says what the runner-up is and what it costs", () => {
    const { next } = rowOf(ebb, "l1");
    const second = solve(ebb).lines.find(({ line }) => line === "l1")?.secondChoice;
    expect(next?.stash).toBe(second?.stash);
    expect(next?.text).toMatch(/^Next: lichen, \d+; \d+ less\.$/); // "Gouache, " is said already
  });
  it("says what it costs here, and over all lines where a swap moves others", () => {
    const line = solve(ebb).lines.find(({ line: id }) => id === "l1");
    const [pick, next] = [line?.pick, line?.candidates.find(({ stash }) => stash !== line.pick?.stash)];
    if (!line || !pick || !next) throw new Error("the sample has two for l1");
    const said = (from: number, to: number, cost: number) => {
      const second = { ...next, likeness: to };
      const changed = { ...line, pick: { ...pick, likeness: from }, candidates: [second] };
      const view = nextBest({ ...changed, secondChoice: { stash: next.stash, cost } }, shelvesOf(ebb));
      return view?.text.replace(/^.*; /, "");
    };
    expect(said(0.86, 0.66, 0.2)).toBe("20 less.");
    expect(said(0.86, 0.864, 0)).toBe("just as near.");
    expect(said(0.82, 0.66, 0.03)).toBe("16 less here, 3 less over all eight.");
    expect(said(0.8, 0.93, 0.03)).toBe("13 more here, 3 less over all eight.");
    expect(said(0.8, 0.7, 0)).toBe("10 less here, no less over all eight.");
  });
  it("says where the kit held more of it than are owned", () => {
    const item = named(book.stash, "st-001");
    const line = { ...lineOf(ebb, "l1"), qty: 2 };
    expect(fewerHere(line, { ...item, owned: null })).toEqual(["2 in the kit, 1 here"]);
    expect(fewerHere(line, { ...item, owned: 2 })).toEqual([]);
    const pad = { family: "paper" as const, name: "Pad", traits: { sheets: 20 } };
    expect(fewerHere(line, { ...item, supply: pad, owned: 1 })).toEqual([]); // both sheets can come from it
  });
  it("walks down the list after a person's own pick, each once", () => {
    let now = ebb;
    const seen = new Set<string>();
    for (let step = 0; step < 20; step++) {
      const { next } = rowOf(now, "l3");
      if (!next) break;
      expect(seen.has(next.stash)).toBe(false);
      seen.add(next.stash);
      now = acted(now, ({ remake }) => pickFor(remake, lineOf(ebb, "l3"), next.stash));
      expect(rowOf(now, "l3")).toMatchObject({ isOwn: true, state: "filled" });
    }
    expect(seen.size).toBeGreaterThan(1);
    expect(rowOf(now, "l3").next).toBeNull();
  });
  it("passes over what is left out, and what would be a gap, on the way down", () => {
    const line = solve(ebb).lines.find(({ line: id }) => id === "l3");
    const [first, second, ...rest] = line?.candidates.filter(({ leftOut }) => leftOut === null) ?? [];
    if (!line || !first || !second) throw new Error("the sample has several for l3");
    const pick = { ...first, by: "person" as const };
    const listed = (candidates: typeof line.candidates) =>
      nextBest({ ...line, pick, candidates, secondChoice: null }, shelvesOf(ebb))?.stash;
    expect(listed([first, second, ...rest])).toBe(second.stash);
    expect(listed([first, { ...second, leftOut: "dried" }, ...rest])).toBe(rest[0]?.stash);
    expect(listed([first, { ...second, verdict: "gap" }])).toBeUndefined();
  });
  it("names a gap's nearest that is left out, and why", () => {
    expect(rowOf(ebb, "l7").gapWhy).toBe("Wash brush comes close, but is left out: dried out.");
  });
  it("marks a last resort, also where the palette is looked at", () => {
    for (const way of ["nearest", "palette"] as const) {
      const notes = viewOf(boat, way).rows.flatMap((row) => row.notes);
      expect(notes.filter((note) => note.startsWith("Last resort"))).toHaveLength(2);
    }
  });
  it("tells of a mix with its work, and how it is judged", () => {
    expect(rowOf(thaw, "l3").standIn?.reasons.slice(1)).toEqual([
      "with watercolour, seal brown: a touch, to dull it",
      "How near is judged by the larger part.",
    ]);
  });
});

it("still shows a pick from far down a list of hundreds that are nearer", () => {
  const near = named(book.stash, "st-001");
  const many = Array.from({ length: 300 }, (_, index) => ({ ...near, id: `more-${index}` }));
  const full = subjectOf({ ...book, stash: [...(book.stash ?? []), ...many] }, "rm-low-light");
  if (!full) throw new Error("the remake is there");
  const far = solve(ebb).lines.find(({ line }) => line === "l1")?.secondChoice?.stash ?? "";
  const picked = acted(full, ({ remake }) => pickFor(remake, lineOf(ebb, "l1"), far));
  expect(rowOf(picked, "l1")).toMatchObject({ state: "filled", standIn: { item: { id: far } } });
});

describe("the two ways of choosing", () => {
  const match = solve(boat);
  const palette = palettePicks(match);
  it("say their own figures: mean nearness, mean miss, and what the steps are off", () => {
    const played = match.lines.map((line) =>
      line.candidates.find(({ stash }) => stash === palette.get(line.line)),
    );
    const misses = played.flatMap((one) => (one && one.deltaE00 !== null ? [one.deltaE00] : []));
    const apart = misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
    const near = played.reduce((sum, one) => sum + (one?.likeness ?? 0), 0) / played.length;
    const steps = (match.palette?.cost ?? 0) / misses.length - apart;
    expect(viewOf(boat).ways.palette).toBe(
      `${Math.round(near * 100)} of 100, colours ${format.number(apart, 1, true)} apart, steps ${format.number(steps, 1, true)} off`,
    );
  });
  it("name the lines they differ in, and show the palette's picks only when asked to", () => {
    const differing = match.lines.filter(({ line, pick }) => pick && palette.get(line) !== pick.stash);
    expect(differing.length).toBeGreaterThan(0);
    const view = viewOf(boat, "palette");
    expect(view.same).toBe(false);
    for (const { line, pick } of differing) {
      expect(view.rows.find((row) => row.line === line)?.standIn?.item.id).toBe(palette.get(line));
      expect(rowOf(boat, line).standIn?.item.id).toBe(pick?.stash);
    }
  });
  it("become the person's picks by an act, and go back by another", () => {
    const picks = match.lines.flatMap(({ line, pick }) => {
      const stash = palette.get(line);
      return pick && stash && pick.deltaE00 !== null ? [{ line: lineOf(boat, line), stash }] : [];
    });
    const taken = acted(boat, ({ remake }) => takeAll(remake, picks));
    for (const { line, stash } of picks) expect(stashOf(solve(taken), line.id)).toBe(stash);
    const back = acted(taken, ({ remake, kit }) => clearAll(remake, kit.lines ?? []));
    expect(back.remake.picks).toEqual([]);
    expect(solve(back)).toEqual(match);
  });
});

describe("what `why?` opens", () => {
  const shelves = shelvesOf(boat);
  const match = solve(boat);
  const opened = (of: Subject, id: string) => {
    const line = solve(of).lines.find((one) => one.line === id);
    if (!line) throw new Error(`no line ${id}`);
    return openedView(lineOf(of, id), line, line.pick?.stash ?? null, shelvesOf(of));
  };
  it("lists who else could play it, best first, without the one who does", () => {
    const view = opened(ebb, "l1");
    const figures = view.runnersUp.map(({ figure }) => Number(figure));
    expect(figures).toEqual(figures.toSorted((a, b) => b - a));
    expect(view.runnersUp.map(({ item }) => item.id)).not.toContain(stashOf(solve(ebb), "l1"));
    expect(view.runnersUp.every(({ way, leftOut }) => way === "use" && leftOut === null)).toBe(true);
  });
  it("lists what is left out with its reason in words", () => {
    expect(opened(boat, "l1").leftOut).toContainEqual(
      expect.objectContaining({
        name: "Gouache, lamp amber",
        reason: "left out: it came with this kit",
        way: "bend",
      }),
    );
    expect(opened(ebb, "l7").leftOut).toContainEqual(
      expect.objectContaining({ name: "Wash brush", reason: "left out: dried out", way: "none" }),
    );
  });
  it.each([
    ["received-before", "it came with this kit", "bend"],
    ["acquired-after", "it came after the kit was known or the remake begun", "bend"],
    ["empty", "none left", "none"],
    ["dried", "dried out", "none"],
    ["in-use:l2", "plays line 2, gouache, tar", "use"],
  ] as const)("says %s as “%s”", (leftOut, said, way) => {
    expect(outText(leftOut, shelves)).toBe(said);
    expect(wayIn(leftOut)).toBe(way);
  });
  it("adds the traits up to the nearness it says, for every candidate of every remake", () => {
    for (const of of [ebb, boat, thaw]) {
      for (const line of solve(of).lines) {
        for (const candidate of line.candidates) {
          const mine = shelvesOf(of).item(candidate.stash)?.supply;
          if (!mine || candidate.trace.length === 0) continue;
          const sum = sumSentence(lineOf(of, line.line).supply, mine, candidate);
          if (candidate.verdict === "same" || candidate.verdict === "twin")
            expect(sum).toMatch(/nothing to compare/);
          else expect(sum).toContain(`comes to ${Math.round(candidate.likeness * 100)} of 100`);
        }
      }
    }
  });
  it("says the factor of another family at its work", () => {
    const line = match.lines.find(({ line: id }) => id === "l4");
    const pick = line?.candidates.find(({ stash }) => stash === line.pick?.stash);
    const mine = shelves.item(pick?.stash)?.supply;
    if (!pick || !mine) throw new Error("the sample's ink stands in for a brush pen");
    expect(sumSentence(lineOf(boat, "l4").supply, mine, pick)).toContain(
      `then × ${format.number(0.65, 2, true)}: ink doing a marker’s work`,
    );
  });
  it("compares a gap with its nearest, and says so", () => {
    expect(opened(ebb, "l7")).toMatchObject({ about: "Wash brush", isNearest: true });
    expect(opened(ebb, "l1").isNearest).toBe(false);
  });
});

describe("a changed pick", () => {
  it("keeps the note on its line and every unknown field of it", () => {
    const odd = { line: "l1", uses: [], by: "person" as const, note: "dull it", mine: 1 };
    const remake: Remake = { ...ebb.remake, picks: [odd] };
    const [change] = pickFor(remake, lineOf(ebb, "l1"), "st-002").changes;
    expect(change).toMatchObject({
      record: { note: "dull it", mine: 1, uses: [{ stash: "st-002", share: "1" }] },
    });
  });
  it("re-solves the rest: what another line used goes to it, and the other finds its next", () => {
    const stash = stashOf(solve(ebb), "l1") ?? "";
    const taken = acted(ebb, ({ remake }) => pickFor(remake, lineOf(ebb, "l2"), stash));
    const moved = movedLines(solve(ebb), solve(taken));
    expect(stashOf(solve(taken), "l2")).toBe(stash);
    expect(moved).toContain("l1");
    expect(tellOf(solve(ebb), taken, "l2", null)).toBe(
      "Line 2 now has gouache, fern shade. Line 1 changed with it.",
    );
  });
  it("may bend a rule, and then says which and why", () => {
    const bend = { rule: 2, why: "Gouache, lamp amber came with this very kit." };
    const bent = acted(boat, ({ remake }) => pickBending(remake, lineOf(boat, "l1"), "st-004", bend));
    expect(stashOf(solve(bent), "l1")).toBe("st-004");
    expect(bent.remake.bends).toEqual([bend]);
  });
  it("can be noted on", () => {
    const noted = acted(thaw, ({ remake }) => {
      const pick = ownPick(remake, "l1");
      if (!pick) throw new Error("the sample picked for l1");
      return setNote(remake, lineOf(thaw, "l1"), pick, "Lovely.");
    });
    expect(ownPick(noted.remake, "l1")).toMatchObject({ note: "Lovely.", uses: [{ stash: "st-021" }] });
    expect(rowOf(noted, "l1").notes).toContain("Lovely.");
  });
});

describe("the fetch list", () => {
  it("lists everything that is used once, by its place, what has none last", () => {
    const view = fetchView(thaw, solve(thaw));
    const ids = view.places.flatMap(({ items }) => items.map(({ id }) => id));
    const used = [
      ...(thaw.remake.picks ?? []).flatMap(({ uses }) => (uses ?? []).map(({ stash }) => stash)),
      ...(thaw.remake.essentials ?? []).map(({ stash }) => stash),
      ...(thaw.remake.shownOnly ?? []).map(({ stash }) => stash),
    ];
    expect(ids.toSorted()).toEqual([...new Set(used)].toSorted());
    expect(view.count).toBe(ids.length);
    for (const { place, items } of view.places)
      for (const { id } of items) expect(named(book.stash, id).place ?? "No place noted").toBe(place);
  });
  it("keeps its ticks in the remake and counts them", () => {
    const [first] = fetchView(ebb, solve(ebb)).places[0]?.items ?? [];
    const ticked = acted(ebb, ({ remake }) => tickFetched(remake, first?.id ?? "", first?.name ?? "", true));
    expect(fetchView(ticked, solve(ticked)).sum).toMatch(/^one of /);
    const unticked = acted(ticked, ({ remake }) => tickFetched(remake, first?.id ?? "", "", false));
    expect([...fetchedIds(unticked.remake)]).toEqual([]);
  });
  it("takes ticks of a strange shape for none", () => {
    expect([...fetchedIds({ ...ebb.remake, fetched: "st-001" })]).toEqual([]);
    expect([...fetchedIds({ ...ebb.remake, fetched: [1, null, "st-001"] })]).toEqual(["st-001"]);
  });
  it("offers as dried out only what can dry, no tool at all, and the rest as used up", () => {
    const all = [ebb, boat, thaw].flatMap((of) =>
      fetchView(of, solve(of)).places.flatMap(({ items }) => items),
    );
    expect(new Set(all.map(({ gone }) => gone))).toEqual(new Set(["dried", "empty", null]));
    for (const { id, gone } of all) {
      const { family } = named(book.stash, id).supply;
      expect(gone === "dried").toBe(["marker", "liner", "ink", "paint"].includes(family));
      expect(gone === null).toBe(["brush", "tool"].includes(family));
    }
    const out = acted(ebb, () => markGone("st-001", "Gouache, fern shade", "empty"));
    expect(named(out.book.stash, "st-001").state).toBe("empty");
  });
  it("solves anew without what was found dry, and says which line changed", () => {
    const stash = stashOf(solve(ebb), "l2") ?? "";
    const dry = acted(ebb, () => markGone(stash, "Gouache, haze", "dried"));
    expect(stashOf(solve(dry), "l2")).not.toBe(stash);
    expect(tellOf(solve(ebb), dry, null, "Gouache, haze is marked dried out.")).toMatch(
      /^Gouache, haze is marked dried out\. Lines? 2.* changed with it\.$/,
    );
  });
});

it("offers from the stash only what has not run out", () => {
  const offered = new Set(stashOptions(book).map(({ value }) => value));
  for (const { id, state, owned, sheetsLeft } of book.stash ?? []) {
    const gone = state === "dried" || state === "empty" || owned === 0 || sheetsLeft === 0;
    expect(offered.has(id)).toBe(!gone);
  }
});
