import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, type Page, test } from "@playwright/test";
import { canonicalJson, type Workbook } from "../../../src/engine/workbook/index.ts";
import { stashOf } from "../../unit/store/books.ts";
import { launchKillable } from "./killable.ts";
import { actsIn, bookIn, rowsIn, stateIn } from "./rows.ts";

const kills = process.env.LONG ? 200 : 5;

type Left = Readonly<{ version: number; rows: Record<string, object[]>; book: Workbook }>;

/** The frozen database of version 2, its stash grown to ten thousand in rows of a hundred as that version laid them. */
async function leftBehind(): Promise<Left> {
  const left: Left = JSON.parse(await readFile("fixtures/databases/version-2.json", "utf8"));
  const stash = stashOf(10_000);
  const chunks = Array.from({ length: 100 }, (_, chunk) => ({
    list: "stash",
    chunk,
    records: stash.slice(100 * chunk, 100 * chunk + 100),
  }));
  const others = left.rows.chunks?.filter((row) => Reflect.get(row, "list") !== "stash") ?? [];
  return { ...left, rows: { ...left.rows, chunks: [...others, ...chunks] }, book: { ...left.book, stash } };
}

/** A page of the app's origin without the app. */
async function elsewhere(page: Page, home: string): Promise<void> {
  await page.route("**/elsewhere", (route) => route.fulfill({ contentType: "text/html", body: "no app" }));
  await page.goto(new URL("/elsewhere", home).href);
}

const writeOld = (page: Page, { version, rows }: Left): Promise<void> =>
  page.evaluate(
    ([wanted, tables]) =>
      new Promise<void>((give, fail) => {
        indexedDB.deleteDatabase("understudy");
        const opening = indexedDB.open("understudy", wanted);
        opening.onerror = () => fail(opening.error);
        opening.onupgradeneeded = () => {
          const db = opening.result;
          db.createObjectStore("chunks", { keyPath: ["list", "chunk"] });
          const journal = db.createObjectStore("journal", { keyPath: "seq", autoIncrement: true });
          journal.createIndex("id", "id", { unique: true });
          db.createObjectStore("meta", { keyPath: "key" });
          db.createObjectStore("snapshots", { keyPath: "id", autoIncrement: true });
          db.createObjectStore("pictures", { keyPath: "sha256" });
        };
        opening.onsuccess = () => {
          const db = opening.result;
          const writing = db.transaction([...db.objectStoreNames], "readwrite", { durability: "strict" });
          for (const [table, held] of Object.entries(tables))
            for (const row of held) writing.objectStore(table).put(row);
          writing.oncomplete = () => {
            db.close();
            give();
          };
        };
      }),
    [version, rows] as const,
  );

/** The version that the database is of, asked for without wanting any. */
const versionOf = (page: Page): Promise<number | undefined> =>
  page.evaluate(async () => (await indexedDB.databases()).find(({ name }) => name === "understudy")?.version);

/** All is as the old version left it, or all is of this one. */
async function checkWhole(page: Page, left: Left): Promise<"old" | "new"> {
  const rows = await rowsIn(page);
  if ((await versionOf(page)) === left.version) {
    const { large, ...old } = rows;
    expect(large).toEqual([]);
    expect(canonicalJson(old)).toBe(canonicalJson(left.rows));
    return "old";
  }
  expect(await versionOf(page)).toBe(30);
  const sizes = rows.chunks.map((row) => [Reflect.get(Object(row), "records")].flat().length);
  expect(Math.max(...sizes)).toBe(250);
  expect(canonicalJson(bookIn(rows))).toBe(canonicalJson(left.book));
  expect(actsIn(rows)).toHaveLength(left.rows.journal?.length ?? 0);
  expect(stateIn(rows).revision).toBe(actsIn(rows).length);
  return "new";
}

// Quality bar D3.
test(`an upgrade killed ${kills} times at any moment is done whole or not at all, at 10,000 things`, async ({
  baseURL,
  launchOptions,
}) => {
  test.setTimeout(60_000 + kills * 15_000);
  const home = baseURL ?? "";
  const profile = await mkdtemp(join(tmpdir(), "understudy-upgraded-"));
  const left = await leftBehind();
  try {
    let stands: "old" | "new" | null = null;
    for (let kill = 0; kill <= kills; kill += 1) {
      const { page, kill: end } = await launchKillable(profile, launchOptions);
      await elsewhere(page, home);
      if (stands !== null) stands = await checkWhole(page, left);
      if (stands !== "old") await writeOld(page, left);
      stands = "old";
      const opening = page.goto(home).catch(() => {}); // it ends with the browser
      await page.waitForURL(home).catch(() => {});
      if (kill < kills) {
        const moment = Math.random() * 500;
        await test.step(`killed after ${moment.toFixed(0)} ms`, () => wait(moment));
        await end();
        await opening;
      } else {
        await page.locator("h1:visible").waitFor();
        await elsewhere(page, home);
        expect(await checkWhole(page, left)).toBe("new");
        await end();
      }
    }
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
});
