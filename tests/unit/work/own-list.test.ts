import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Draft, saidBy } from "../../../src/engine/intake/index.ts";
import type { Language } from "../../../src/engine/record/index.ts";
import type { StashItem } from "../../../src/engine/supply/index.ts";
import { readWorkbook } from "../../../src/engine/workbook/index.ts";
import { type ListKind, listFile, listKinds } from "../../../src/work/out/list-file.ts";
import { createSession } from "../../../src/work/session.ts";
import { around } from "../intake/around.ts";

const sample = (): readonly StashItem[] => {
  const read = readWorkbook(readFileSync("fixtures/sample.understudy.json", "utf8"));
  if (!read.ok) throw new Error("the sample does not read");
  return read.workbook.stash ?? [];
};
const kits = ["kit-a"];

/** What comes of a list when it is brought in. */
async function broughtIn(bytes: Uint8Array, stash: readonly StashItem[] = [], language: Language = "en") {
  const session = createSession();
  const opened = await session.openFile(bytes, "list");
  expect(opened).toMatchObject({ ok: true });
  expect(session.guess(0, "SEK", language)).toBe(null);
  const summary = session.readItems(around({ stash, kits, language }));
  return { drafts: session.drafts([]), summary };
}
const said = (items: readonly (StashItem | Draft)[]) => items.map((item) => saidBy(item));

/** Every trait that there is, and what is easily lost on the way. */
const odd: readonly StashItem[] = JSON.parse(readFileSync("fixtures/lists/odd-stash.json", "utf8"));

const cases = listKinds.flatMap((kind) =>
  (["en", "sv"] as const).map((language) => [kind, language] as const),
);

describe.each(cases)("%s, in %s", (kind: ListKind, language: Language) => {
  it("comes back in with every fact it had, under the same ids", async () => {
    for (const items of [odd, sample().map(({ fromKit: _, safety: __, ...rest }) => rest)]) {
      const { drafts, summary } = await broughtIn(
        await listFile(kind, items, language, "Stash"),
        [],
        language,
      );
      expect(summary).toMatchObject({ fresh: items.length, here: 0, refused: 0, doubtful: 0 });
      expect(said(drafts)).toEqual(said(items));
    }
  });
  it("adds nothing where the things are here", async () => {
    const { summary } = await broughtIn(await listFile(kind, odd, language, "Stash"), odd, language);
    expect(summary).toMatchObject({ fresh: 0, here: odd.length, refused: 0 });
    expect(summary?.notAdded[0]?.read).toMatchObject({
      reason: language === "en" ? "already here" : "finns redan",
    });
  });
});
