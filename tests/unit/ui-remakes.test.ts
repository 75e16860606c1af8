import { describe, expect, it } from "vitest";
import { readWorkbook, type Workbook } from "../../src/engine/workbook/index.ts";
import { worthOf } from "../../src/engine/worth/index.ts";
import { bytesOf, defaultLimitBytes } from "../../src/engine/writeup/index.ts";
import { startRemake } from "../../src/store/index.ts";
import { applyChanges } from "../../src/store/journal/index.ts";
import { today } from "../../src/ui/remakes/today.ts";
import { benchLead, notesOf, roleOptions } from "../../src/ui/remakes/view/bench.ts";
import { kitOptions, newRemake, remakesView } from "../../src/ui/remakes/view/list.ts";
import { changedAt, withoutAt } from "../../src/ui/remakes/view/lists.ts";
import { promptsOf } from "../../src/ui/remakes/view/prompts.ts";
import { kitTitle, type Subject, solve, subjectOf } from "../../src/ui/remakes/view/solve.ts";
import { isSecure, printTags, readTags } from "../../src/ui/remakes/view/tags.ts";
import { isTime } from "../../src/ui/remakes/view/time.ts";
import { judgedCount, verdictView } from "../../src/ui/remakes/view/verdict.ts";
import { forms, limitOf, readLimit, versionOf, writeUpView } from "../../src/ui/remakes/view/write-up.ts";
import { format } from "../../src/ui/words/index.ts";
import fc from "../chance.ts";
import { named, sampleBook } from "./sample.ts";

// The sentences come from the design (no outside source); figures are worked out here once more.
const book = sampleBook();

function subject(id: string, of: Workbook = book): Subject {
  const found = subjectOf(of, id);
  if (!found) throw new Error(`no remake ${id}`);
  return found;
}

const thaw = subject("rm-slow-thaw");
const withEpisode = (of: Subject, episode: Subject["remake"]["episode"]): Subject => ({
  ...of,
  remake: { ...of.remake, episode },
});

describe("the list of remakes", () => {
  it("counts those under way and those finished", () => {
    expect(remakesView(book).lead).toBe("Two remakes under way, one finished.");
  });
  it("has the newest first, each with where it stands", () => {
    const { rows } = remakesView(book);
    expect(rows.map(({ id }) => id)).toEqual(["rm-low-light", "rm-boathouse", "rm-slow-thaw"]);
    expect(rows[0]).toMatchObject({ title: "Low light, ebb tide", stands: "7 of 8 have a stand-in" });
  });
  it("says finished, then published, as it gets there", () => {
    const stands = (remake: Subject["remake"]) => remakesView({ ...book, remakes: [remake] }).rows[0]?.stands;
    const plain = { ...thaw.remake, finished: null, published: [] };
    expect(stands(plain)).toBe("9 of 9 judged");
    expect(stands({ ...plain, finished: "2026-03-14" })).toBe(`finished ${format.date("2026-03-14")}`);
    expect(stands({ ...plain, published: [{ at: "2026-03-20", text: "", figures: null }] })).toBe(
      `published ${format.date("2026-03-20")}`,
    );
  });
  it("offers every kit to take up, the newest first", () => {
    const offered = kitOptions(book).map(({ value }) => named(book.kits, value).period);
    expect(offered).toHaveLength(book.kits?.length ?? 0);
    expect(offered).toEqual(offered.toSorted().toReversed());
  });
  it("starts one that is a valid workbook, with the kit's prompt in sight", () => {
    const kit = named(book.kits, "sp-2025-06");
    const done = applyChanges(book, startRemake(newRemake("rm-new", kit, "2026-06-01"), kit).changes);
    if (!done.ok) throw new Error(done.fault.problem);
    expect(readWorkbook(JSON.stringify(done.value.book)).ok).toBe(true);
    expect(promptsOf(subject("rm-new", done.value.book))).toEqual([kit.prompt]);
  });
  it("leaves a remake of a kit that is gone out, and gives nothing for an unknown id", () => {
    expect(remakesView({ ...book, kits: [] }).rows).toEqual([]);
    expect(subjectOf(book, "__proto__")).toBeNull();
  });
});

describe("the bench", () => {
  it("sums up the steps, the basics and the bends", () => {
    expect(benchLead(thaw)).toEqual({
      lead: "Six steps noted.",
      more: "One basic added. One rule bent, and said so.",
    });
  });
  it("keeps a role of the person's own among the choices", () => {
    expect(roleOptions("varnish").at(-1)).toEqual({ value: "varnish", label: "varnish" });
    expect(roleOptions("sketch")).toHaveLength(3);
  });
  it("reads notes only where they are text", () => {
    expect(notesOf({ ...thaw.remake, notes: "dry" })).toBe("dry");
    expect(notesOf({ ...thaw.remake, notes: { not: "text" } })).toBe("");
  });
  it.each([
    ["", true],
    ["0:00", true],
    ["12:30", true],
    ["1:02:03", true],
    ["12:60", false],
    ["half past", false],
    ["12.30", false],
  ])("takes %j for a time: %s", (text, yes) => expect(isTime(text)).toBe(yes));
  it("changes and takes out one entry, and no other", () => {
    const list = [{ a: 1 }, { a: 2 }, { a: 3 }];
    expect(changedAt(list, 1, { a: 9 })).toEqual([{ a: 1 }, { a: 9 }, { a: 3 }]);
    expect(withoutAt(list, 0)).toEqual([{ a: 2 }, { a: 3 }]);
  });
});

describe("the verdict", () => {
  it("counts what was judged, used often and bought", () => {
    const view = verdictView(thaw, solve(thaw));
    const said = thaw.remake.verdicts ?? [];
    expect(view.lead).toBe("All nine judged.");
    expect(said.filter(({ use }) => (use ?? 0) >= 3)).toHaveLength(8);
    expect(view.more).toBe("Eight you would use often or more, four you would buy.");
  });
  it("does not count an entry that says nothing", () => {
    const remake = {
      ...thaw.remake,
      verdicts: [
        { line: "l1", use: null, text: "" },
        { line: "l2", use: 0 },
      ],
    };
    expect(judgedCount(remake)).toBe(1);
    expect(verdictView({ ...thaw, remake }, solve(thaw)).lead).toBe("One of nine judged.");
  });
});

describe("the write-up", () => {
  it("is within the limit, with its count", () => {
    const view = writeUpView(thaw, "text", defaultLimitBytes);
    const bytes = Buffer.byteLength(view?.text ?? "", "utf8"); // Node's own count of UTF-8
    expect(bytes).toBeLessThanOrEqual(5000);
    expect(view?.count).toBe(`${format.count(bytes)} of ${format.count(5000)} bytes`);
    expect(view?.leftOut).toMatch(/^Left out for length: /);
    expect(view?.lead).toBe("Ready, but shortened.");
  });
  it("is not for copying until it is said how the supplies came", () => {
    const view = writeUpView(withEpisode(thaw, { title: "Slow thaw" }), "text", defaultLimitBytes);
    expect(view?.notNow).toMatch(/how the supplies came to you/);
    expect(view?.lead).toBe("Nearly ready.");
    expect(writeUpView(thaw, "text", defaultLimitBytes)?.notNow).toBeNull();
  });
  it("comes in three forms, each with its own file", () => {
    const names = forms.map((form) => writeUpView(thaw, form, defaultLimitBytes)?.fileName);
    expect(names).toEqual(["slow-thaw.txt", "slow-thaw.md", "slow-thaw.csv"]);
    expect(writeUpView(thaw, "markdown", defaultLimitBytes)?.text).toMatch(/^\*\*/);
  });
  it("names a file whatever the kit is called", () => {
    const named = (title: string) =>
      writeUpView(
        { ...thaw, kit: { ...thaw.kit, title }, book: { ...book, kits: [{ ...thaw.kit, title }] } },
        "text",
        900,
      )?.fileName;
    expect(named("Ångström / ../x")).toBe("angstrom-x.txt");
    expect(named("…")).toBe("write-up.txt");
  });
  it("keeps a version as it is, with the figures of that day", () => {
    const text = writeUpView(thaw, "text", 2000)?.text ?? "";
    const version = versionOf(thaw, text, "2026-05-09");
    expect(version).toMatchObject({ at: "2026-05-09", text });
    expect(bytesOf(version.text ?? "")).toBeLessThanOrEqual(2000);
    const worth = worthOf(book, thaw.kit, book.home?.reportMarkets ?? []);
    expect(version.figures).toEqual(worth.ok ? worth.value : null);
    expect(version.figures).not.toBeNull();
  });
  it.each([
    ["5000", 5000],
    ["5,000", 5000],
    ["5 000", 5000],
    ["0", null],
    ["-5", null],
    ["many", null],
    ["", null],
  ])("reads the limit %j as %s", (typed, limit) => expect(readLimit(typed)).toBe(limit));
  it("falls back on the usual limit", () => expect(limitOf("x")).toBe(5000));
});

describe("tags and links", () => {
  it("reads tags with commas or number signs between, none twice", () => {
    expect(readTags("gouache,  shore,#gouache, , north sea")).toEqual(["gouache", "shore", "north sea"]);
  });
  it("reads back what it prints", () => {
    const tag = fc.string({ minLength: 1 }).map((text) => text.replace(/[,#\n]/g, "").trim());
    fc.assert(
      fc.property(fc.array(tag), (tags) => {
        const clean = [...new Set(tags.filter((one) => one !== ""))];
        expect(readTags(printTags(clean))).toEqual(clean);
      }),
    );
  });
  it.each([
    ["https://example.org/a", true],
    ["http://example.org", false],
    ["ftp://example.org", false],
    ["https://exa mple.org", false],
  ])("takes %s for a secure address: %s", (url, yes) => expect(isSecure(url)).toBe(yes));
});

it("says the day where the reader is", () => {
  expect(today(new Date(2026, 0, 5, 23, 59))).toBe("2026-01-05");
});

it("calls a kit by its title, else by maker and month", () => {
  expect(kitTitle(thaw.kit)).toBe("Slow thaw");
  expect(kitTitle({ ...thaw.kit, title: "" })).toBe("Skarvholm Parcel 2026-02");
});
