import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { places } from "./places.ts";
import { textsIn } from "./texts.ts";

// No outside source: the sentences are the project's own.

/** Files of a language that hold no place's words: how it counts, how an act reads once done, faults by their English. */
const noPlaces = ["done.ts", "faults.ts", "say.ts"];

/** What both languages write alike, beside what texts are asked with here; a file's place is as the terminal says it. */
const alike = new Set("understudy kit ctrl z n l a b markdown orange form mm ml g m file".split(" "));
const asked = /^(?:zq|zw|zy|null|true|false)+$/;

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];
const isAlike = (text: string): boolean => wordsOf(text).every((word) => alike.has(word) || asked.test(word));

/** Words that no Swedish sentence of ours has use for. */
const small = new Set(
  "the of and with not from is are your my what this that by which there have has nothing line lines prices to".split(
    " ",
  ),
);

it.each(["en", "sv"])("every place's words are looked at here: %s", (language) => {
  const files = readdirSync(`src/ui/words/${language}`).filter((file) => !noPlaces.includes(file));
  expect(places.map(([name]) => `${name}.ts`)).toEqual(files.toSorted());
});

describe.each(places)("the Swedish of %s", (_, en, sv) => {
  const english = new Map(textsIn(en));
  const swedish = textsIn(sv);
  /** Texts that stand as they are: what is asked with samples may begin or end with a sample. */
  const plain = swedish.filter(([at]) => !at.includes("("));

  it("is no English still, neither whole nor in part", () => {
    expect(swedish.filter(([at, said]) => said === english.get(at) && !isAlike(said))).toEqual([]);
    expect(swedish.filter(([, said]) => wordsOf(said).some((word) => small.has(word)))).toEqual([]);
  });
  it("answers whatever its English answers", () => {
    const paths = new Set(swedish.map(([at]) => at));
    expect([...english.keys()].filter((at) => !paths.has(at))).toEqual([]);
  });
  it("begins and ends as its English does, and quotes as Swedish does", () => {
    for (const [at, said] of plain) {
      const before = english.get(at) ?? "";
      expect(said, at).not.toMatch(/[“‘"]/);
      expect(said.endsWith("."), at).toBe(before.endsWith("."));
      expect(/^\p{Lu}/u.test(said), at).toBe(/^\p{Lu}/u.test(before));
    }
  });
});
