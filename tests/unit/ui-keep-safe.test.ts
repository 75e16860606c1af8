import { describe, expect, it } from "vitest";
import { emptyWorkbook, sizeLimitBytes, writeWorkbook } from "../../src/engine/workbook/index.ts";
import { type ActHead, backupFile } from "../../src/store/index.ts";
import { bytesText } from "../../src/ui/keep-safe/view/bytes.ts";
import { copyName, writtenText } from "../../src/ui/keep-safe/view/copy.ts";
import { healthView } from "../../src/ui/keep-safe/view/health.ts";
import { onceEach } from "../../src/ui/keep-safe/view/history.ts";
import { countRows, previewOf } from "../../src/ui/keep-safe/view/preview.ts";
import { readCopy } from "../../src/ui/keep-safe/view/read-copy.ts";
import { changesSince, isCopyDue, type Kept, keptView } from "../../src/ui/keep-safe/view/state.ts";
import { formatter } from "../../src/ui/words/index.ts";
import { sampleBook } from "./sample.ts";

const format = formatter("en-GB");

describe("the name of a copy", () => {
  it.each([
    ["Marit's workbook", "understudy-marits-workbook-2026-05-01.json"],
    ["  Åsa & Märta / 2026  ", "understudy-åsa-märta-2026-2026-05-01.json"],
    ["絵の具の帳面", "understudy-絵の具の帳面-2026-05-01.json"],
    ["../../etc", "understudy-etc-2026-05-01.json"],
    ["***", "understudy-2026-05-01.json"],
    ["", "understudy-2026-05-01.json"],
    [null, "understudy-2026-05-01.json"],
  ])("of %j is %s", (name, file) => expect(copyName(name, "2026-05-01")).toBe(file));

  it("stays short, and does not end in a hyphen", () => {
    const name = copyName(`${"a".repeat(39)} ${"b".repeat(60)}`, "2026-05-01");
    expect(name).toBe(`understudy-${"a".repeat(39)}-2026-05-01.json`);
  });
});

it("tells each act once, as it stands now", () => {
  const act = (id: string, kind: ActHead["kind"], of?: string): ActHead => ({
    ...{
      id,
      kind,
      label: id,
      device: "d",
      counter: 1,
      at: "2026-05-01T10:00:00.000Z",
      changes: [],
      inverse: [],
    },
    ...(of === undefined ? {} : { of }),
  });
  const newestFirst = [
    act("d:6", "redo", "d:2"),
    act("d:5", "undo", "d:2"),
    act("d:4", "undo", "d:3"),
    act("d:3", "do"),
    act("d:2", "do"),
    act("d:1", "do"),
  ];
  expect(onceEach(newestFirst).map(({ id, kind }) => [id, kind])).toEqual([
    ["d:6", "redo"],
    ["d:4", "undo"],
    ["d:1", "do"],
  ]);
});

it("says what was written, counted, and that it could be read back", () => {
  const book = sampleBook();
  const file = backupFile(book, "2026-05-01T10:00:00.000Z");
  const text = writtenText("a.json", file, 186, format);
  const kilobytes = Math.round(new TextEncoder().encode(file.text).length / 1000);
  expect(text).toBe(`Written: a.json, 186 records, ${kilobytes} kB. It was read back and is whole.`);
});

// SI prefixes, steps of a thousand (ISO 80000-1)
it.each([
  [0, "0 B"],
  [999, "999 B"],
  [1000, "1 kB"],
  [1300, "1.3 kB"],
  [96_000, "96 kB"],
  [1_340_000, "1.3 MB"],
  [12_000_000_000, "12 GB"],
  [9_000_000_000_000, "9,000 GB"],
])("%d bytes are %s", (bytes, text) => expect(bytesText(bytes, format)).toBe(text));

describe("when a copy is due", () => {
  const at = (hour: number, day = 2) => `2026-05-0${day}T${String(hour).padStart(2, "0")}:00:00.000Z`;
  const kept = (more: Partial<Kept> = {}): Kept => ({
    empty: false,
    lasting: true,
    lastCopy: at(10),
    past: [{ at: at(9) }, { at: at(11) }, { at: at(12) }],
    now: at(13),
    ...more,
  });

  it("counts the changes that the copy does not have", () => {
    expect(changesSince(kept())).toBe(2);
    expect(changesSince(kept({ lastCopy: null }))).toBe(3);
    expect(keptView(kept(), format).lead).toMatch(
      /^Your last copy is of 2 May 2026, \d\d:00, 2 changes ago\.$/,
    );
    expect(keptView(kept({ lastCopy: at(12, 3) }), format).lead).toContain("has everything");
  });

  it("is after 25 changes", () => {
    const changes = (count: number) => Array.from({ length: count }, () => ({ at: at(11) }));
    expect(isCopyDue(kept({ past: changes(24) }))).toBe(false);
    expect(isCopyDue(kept({ past: changes(25) }))).toBe(true);
  });

  it("is after a day, where anything changed", () => {
    expect(isCopyDue(kept({ now: at(10, 3) }))).toBe(false);
    expect(isCopyDue(kept({ now: at(11, 3) }))).toBe(true);
    expect(isCopyDue(kept({ now: at(11, 3), past: [{ at: at(9) }] }))).toBe(false);
    expect(isCopyDue(kept({ now: at(11, 3), lastCopy: null }))).toBe(true);
  });

  it("is never, where there is nothing", () => {
    expect(isCopyDue(kept({ empty: true, now: at(11, 9) }))).toBe(false);
    expect(keptView(kept({ empty: true }), format).lead).toBe("There is nothing to keep yet.");
  });
});

describe("a chosen file", () => {
  const file = (bytes: Uint8Array<ArrayBuffer>) => new Blob([bytes]);
  const slice = () => new Blob(["{"]);
  const text = (content: string) => new TextEncoder().encode(content);

  it("is read whole when it is a copy", async () => {
    const book = sampleBook();
    const read = await readCopy(file(text(backupFile(book, "2026-05-01T10:00:00.000Z").text)));
    expect(read).toMatchObject({ ok: true, damaged: false, writtenAt: "2026-05-01T10:00:00.000Z" });
    if (read.ok) expect(read.book).toEqual(book);
  });

  it("is read with a byte-order mark in front, as some editors write it", async () => {
    const read = await readCopy(file(text(`\uFEFF${writeWorkbook(emptyWorkbook())}`)));
    expect(read.ok).toBe(true);
  });

  // RFC 3629: C3 must be followed by a byte of 80 to BF; FF never occurs in UTF-8
  it.each([
    ["Latin-1", [0x7b, 0xc3, 0x7d]],
    ["UTF-16", [0xff, 0xfe, 0x7b, 0x00, 0x7d, 0x00]],
    ["a surrogate half", [0xed, 0xa0, 0x80]],
  ])("is refused in %s, at the file", async (_, bytes) => {
    const read = await readCopy(file(new Uint8Array(bytes)));
    expect(read).toMatchObject({ ok: false, faults: [{ place: "file", problem: "not text in UTF-8" }] });
  });

  it("is refused above 50 MB without being taken into memory", async () => {
    const never = {
      slice,
      size: sizeLimitBytes + 1,
      arrayBuffer: () => Promise.reject(new Error("was read")),
    };
    const read = await readCopy(never);
    expect(read).toMatchObject({ ok: false, faults: [{ place: "file", problem: "larger than 50 MB" }] });
  });

  it("is refused when the device no longer gives it", async () => {
    const gone = {
      slice,
      size: 12,
      arrayBuffer: () => Promise.reject(new DOMException("gone", "NotFoundError")),
    };
    expect(await readCopy(gone)).toMatchObject({ ok: false, faults: [{ place: "file" }] });
  });

  it("is refused with every fault at its place", async () => {
    const wrong = {
      format: "understudy-workbook",
      version: 1,
      stash: [{ id: "a" }, { id: "a" }],
      kits: [{ id: "k" }],
    };
    const read = await readCopy(file(text(JSON.stringify(wrong))));
    if (read.ok) throw new Error("was taken");
    const places = read.faults.map(({ place }) => place);
    expect(places).toEqual(
      expect.arrayContaining([
        "stash[0].supply",
        "stash[1].supply",
        "stash[1].id",
        "kits[0].maker",
        "kits[0].period",
      ]),
    );
  });
});

describe("the preview of a restore", () => {
  const book = sampleBook();

  it("sets what is here beside what is in the copy, and leaves out what neither has", () => {
    const rows = countRows(emptyWorkbook(), book, format);
    const kits = rows.find(({ key }) => key === "kits");
    expect(kits).toMatchObject({ here: "0", there: String(book.kits?.length) });
    expect(rows.find(({ key }) => key === "lines")?.there).toBe(
      String((book.kits ?? []).flatMap(({ lines }) => lines ?? []).length),
    );
    expect(countRows(emptyWorkbook(), emptyWorkbook(), format)).toEqual([]);
  });

  it("says when it was written, that it was changed since, and what is odd in it", () => {
    const read = {
      ok: true,
      book,
      writtenAt: "2026-05-01T10:00:00.000Z",
      records: 1,
      damaged: true,
    } as const;
    const preview = previewOf(emptyWorkbook(), read, "2025-01-01", format);
    expect(preview).toMatchObject({ when: "1 May 2026", damaged: true });
    expect(preview.odd).toContain("kits[9].valuedOn: 2026-04-30 is still to come");
    expect(
      previewOf(emptyWorkbook(), { ...read, writtenAt: "a while ago" }, "2027-01-01", format).when,
    ).toBeNull();
  });
});

describe("the storage's health", () => {
  it.each([
    [true, false],
    [false, true],
    [null, false],
  ])("with a promise of %s, can be asked for one: %s", (promised, canAsk) =>
    expect(healthView({ promised, usedBytes: 1e6, quotaBytes: 1e9 }, format).canAsk).toBe(canAsk),
  );

  it("says how much is used, as far as the browser says", () => {
    const texts = (usedBytes: number | null, quotaBytes: number | null) =>
      healthView({ promised: null, usedBytes, quotaBytes }, format).texts[1];
    expect(texts(1e6, 1e9)).toBe("1 MB are used, of about 1 GB that there would be.");
    expect(texts(1e6, null)).toBe("1 MB are used.");
    expect(texts(null, null)).toContain("does not say");
  });
});
