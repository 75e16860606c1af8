import type { Remake } from "../../../src/engine/workbook/index.ts";
import fc from "../../chance.ts";

/**
 * What is wrong with a text for a platform: its usual habits, common practice, no source.
 * @param chapterHeading what the chapters stand under
 */
export function platformFaults(text: string, chapterHeading = "CHAPTERS"): readonly string[] {
  const rows = text.split("\n");
  const chapterStart = rows.indexOf(chapterHeading);
  const chapterEnd = chapterStart < 0 ? -1 : rows.indexOf("", chapterStart);
  const chapters = chapterStart < 0 ? [] : rows.slice(chapterStart + 1, chapterEnd);
  const prose = rows.filter(
    (row, i) => !(i > chapterStart && i < chapterEnd) && !row.startsWith("#") && !row.includes("https://"),
  );
  const times = chapters
    .map((row) => /^(?:(\d+):)?(\d+):(\d\d) /.exec(row))
    .map((t) => (t ? Number(t[1] ?? 0) * 3600 + Number(t[2]) * 60 + Number(t[3]) : Number.NaN));
  return [
    ...(/[<>]/.test(text) ? ["angle bracket"] : []),
    ...(text !== text.normalize("NFC") ? ["not composed"] : []),
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
    ...(/[\u0000-\u0009\u000b-\u001f\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff]/.test(text)
      ? ["invisible sign"]
      : []),
    ...prose.filter((row) => /\d:\d\d/.test(row)).map((row) => `looks like a time: ${row}`),
    ...prose.filter((row) => row.includes("#")).map((row) => `a tag in prose: ${row}`),
    ...(chapters.length > 0 && (chapters.length < 3 || times[0] !== 0) ? ["chapters do not begin well"] : []),
    ...times.filter((time, i) => i > 0 && time - (times[i - 1] ?? 0) < 10).map(() => "chapters too close"),
  ];
}

/** Texts that could make a description lie, link or break. */
export const nasty = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 40 }),
  fc.constantFrom(
    "<b>",
    "at 1:30",
    "#tag",
    "\u202Eright to left",
    "a\u200Bb",
    "line\nbreak",
    "=SUM(A1)",
    "e\u0301",
    "12:30:10",
    "\ud800",
  ),
);

const logged = fc.array(
  fc.record({ at: fc.constantFrom("0:00", "0:05", "1:10", "02:30", "x"), text: nasty }),
  { maxLength: 6 },
);

const disclosure = fc.constantFrom("own", "bought", "gifted", "lent", "sponsored", "affiliate", null);

/** All of a remake that a person types, as nasty as it gets. */
export const typedParts: fc.Arbitrary<Partial<Remake>> = fc
  .tuple(nasty, nasty, nasty, logged, disclosure, fc.integer({ min: 0, max: 5 }), fc.boolean())
  .map(([title, bend, said, log, how, use, buy]) => ({
    episode: { title, disclosure: how, tags: [said] },
    bends: [{ rule: 1, why: bend }, {}],
    corrections: [{ at: "12:30", said, meant: title }, {}],
    verdicts: [{ line: "l1", use, buy, replaces: bend, text: said }],
    verdict: title,
    questions: [bend],
    prompts: [{ text: said }],
    log,
  }));
