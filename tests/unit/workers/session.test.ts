import { describe, expect, it } from "vitest";
import { createSession } from "../../../src/workers/session.ts";
import { around } from "../intake/around.ts";
import { sampleBook } from "../sample.ts";

const list = "Name,Type,Qty\nMoss,marker,2\nTotal,,3\nBrick,marker,1\n=cmd,marker,lots\n";
const words = { reason: "Why", leftOut: "left out by you" };

async function opened(text: string) {
  const session = createSession();
  await session.openText(text, "list");
  const guess = session.guess(0, "SEK", "en");
  if (!guess) throw new Error("no table");
  return { session, guess };
}

describe("a list that is brought in", () => {
  it("is counted, and its first rows are shown beside their cells", async () => {
    const { session, guess } = await opened(list);
    const summary = await session.readRows(guess.mapping, around(), () => {});
    expect(summary).toMatchObject({ fresh: 3, here: 0, refused: 1, doubtful: 1 });
    expect(summary?.first.map(({ cells }) => cells[0])).toEqual(["Moss", "Total", "Brick", "=cmd"]);
    expect(summary?.notAdded.map(({ read }) => read.row)).toEqual([2]);
  });
  it("gives what is to be added without what was taken out", async () => {
    const { session, guess } = await opened(list);
    await session.readRows(guess.mapping, around(), () => {});
    expect(session.drafts([]).map(({ supply }) => supply.name)).toEqual(["Moss", "Brick", "=cmd"]);
    expect(session.drafts([1]).map(({ supply }) => supply.name)).toEqual(["Brick", "=cmd"]);
  });
  it("gives the rest with its reasons, inert in a spreadsheet, and readable here again", async () => {
    const { session, guess } = await opened(list);
    await session.readRows(guess.mapping, around(), () => {});
    const rest = session.rest([4], words);
    expect(rest).toBe(
      'Why,Name,Type,Qty\r\n"a sum of the list, no thing",Total,,3\r\nleft out by you,\'=cmd,marker,lots\r\n',
    );
    const again = await opened(rest);
    const summary = await again.session.readRows(again.guess.mapping, around(), () => {});
    expect(summary?.first.at(-1)?.read).toMatchObject({ draft: { supply: { name: "=cmd" } } });
  });
  it("says how far it is, and gives way to what is asked later", async () => {
    const { session, guess } = await opened(`Name,Type\n${"Moss,marker\n".repeat(2_000)}`);
    const heard: number[] = [];
    const first = session.readRows(guess.mapping, around(), (done) => heard.push(done));
    const second = session.readRows(guess.mapping, around(), () => {});
    expect(await first).toBeNull();
    expect((await second)?.fresh).toBe(2_000);
    expect(heard).toEqual([0]);
    await session.readRows(guess.mapping, around(), (done, all) => heard.push(done / all));
    expect(heard.length).toBeGreaterThan(4);
  });
  it("can be parted by another sign", async () => {
    const { session } = await opened("a,b;c\nd,e;f\n");
    expect(await session.partBy("|")).toMatchObject({ ok: true, sheets: [{ rows: 2, columns: 1 }] });
  });
  it("can be somebody's workbook, of which the stash is taken", async () => {
    const book = sampleBook();
    const session = createSession();
    expect(await session.openText(JSON.stringify(book), "book")).toMatchObject({
      ok: true,
      kind: "workbook",
    });
    expect(session.guess(0, "SEK", "en")).toBeNull();
    expect(session.readItems(around())?.fresh).toBe(book.stash?.length);
    expect(session.readItems(around({ stash: book.stash ?? [] }))?.fresh).toBe(0);
    expect(session.rest([], words).split("\r\n")[1]).toMatch(/^already here,/);
  });
  it("that is refused leaves nothing of the one before", async () => {
    const { session, guess } = await opened(list);
    await session.readRows(guess.mapping, around(), () => {});
    expect(await session.openText("<html>", "page")).toEqual({ ok: false, fault: "web-page" });
    expect(session.drafts([])).toEqual([]);
    expect(session.guess(0, "SEK", "en")).toBeNull();
  });
});
