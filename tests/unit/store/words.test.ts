import { beforeAll, describe, expect, it, vi } from "vitest";
import type { StoreFaultKind } from "../../../src/store/faults.ts";
import { storeWords as en } from "../../../src/store/words/en.ts";
import { storeWords as sv } from "../../../src/store/words/sv.ts";
import { bookOf, item } from "./books.ts";

// The language is fixed when the page is loaded, so the store is loaded anew for a reader of Swedish.
async function inSwedish() {
  vi.stubGlobal("navigator", { languages: ["sv-SE", "en"] });
  vi.resetModules();
  const acts = await import("../../../src/store/acts/index.ts");
  const { refusal, storeFault } = await import("../../../src/store/faults.ts");
  const { newBook, newStorage, repositoryIn } = await import("./tools.ts");
  vi.unstubAllGlobals();
  return { acts, refusal, storeFault, newBook, newStorage, repositoryIn };
}

let store: Awaited<ReturnType<typeof inSwedish>>;
beforeAll(async () => {
  store = await inSwedish();
});

const kit = { id: "k1", maker: "Nordljus", period: "2026-04", title: "Aprilljus" };
const line = { ...item("moss"), id: "l1" };
const unnamed = { id: "st-9", supply: { family: "other" as const, name: "" } };
const remake = { id: "rm", kit: "k1", started: "2026-05-02" };
const shop = { id: "s1", name: "Hyllan", market: "se" };
const book = bookOf({
  stash: [item("st-1"), item("st-2")],
  kits: [{ ...kit, lines: [line] }],
  remakes: [remake],
});

describe("acts in Swedish", () => {
  it("name what is done, in the imperative", () => {
    const { acts } = store;
    expect([
      acts.addKit(kit).label,
      acts.removeKit(book, kit).label,
      acts.addLine(kit, line).label,
      acts.addLines(kit, [line]).label,
      acts.addLines(kit, [line, item("l2")]).label,
      acts.addStashItem(unnamed).label,
      acts.removeStashItems(book, book.stash ?? []).label,
      acts.changeStock(item("st-1"), -2, "sheetsLeft").label,
      acts.setPick(remake, line, { line: "l1" }).label,
      acts.settle(kit, line, { kind: "list" }).label,
      acts.addRates({ date: "2026-02-27", base: "EUR", quotes: {} }).label,
    ]).toEqual([
      "Skriv in kitet Aprilljus",
      "Ta bort kitet Aprilljus och 1 omtag",
      "Lägg till Gouache, moss i Aprilljus",
      "Lägg till 1 rad i Aprilljus",
      "Lägg till 2 rader i Aprilljus",
      "Lägg till ett material utan namn i förrådet",
      "Ta bort 2 saker från förrådet",
      "Ta ut 2 ark av Gouache, st-1",
      "Välj vad som ersätter Gouache, moss",
      "Välj priset att gå på för Gouache, moss",
      "Lägg till kurserna för 27 feb. 2026",
    ]);
  });
  it("name the field that is changed, or only what it belongs to where the field has no word", () => {
    const { acts } = store;
    expect(acts.editShop(shop, ["name"], "Hylla").label).toBe("Ändra namnet på Hyllan");
    expect(acts.editKit(kit, ["received"], true).label).toBe("Ändra om du redan har fått Aprilljus");
    expect(acts.editShop(shop, ["ownField"], 1).label).toBe("Ändra Hyllan");
    expect(acts.editHome(["market"], "se").label).toBe("Ändra hemmarknaden");
  });
});

describe("what cannot be kept", () => {
  const kinds: readonly Exclude<StoreFaultKind, "refused">[] = [
    "quota",
    "interrupted",
    "closed",
    "newer",
    "stale",
    "damaged",
    "unavailable",
  ];
  it.each(kinds)("%s is said in Swedish, whole", (kind) => {
    const { kind: _, place: __, ...said } = store.storeFault(kind);
    expect(said).toEqual(sv.faults[kind]);
    for (const [part, text] of Object.entries(said)) {
      expect(text).toMatch(/^\p{Lu}.*\.$/u);
      expect(Object.values(en.faults[kind]), part).not.toContain(text);
    }
  });
  it("a refused change says that nothing was changed", () => {
    expect(store.refusal({ place: "x", problem: "p", remedy: "r" }).safe).toBe("Inget ändrades.");
  });
  it("nothing to undo, and what a snapshot is gone back to", async () => {
    const { newBook, newStorage, repositoryIn } = store;
    const opened = newBook();
    await opened.openBook(repositoryIn(newStorage()));
    expect(await opened.undo()).toMatchObject({
      fault: { problem: "Det finns inget att ångra.", remedy: "Fortsätt från det som finns." },
    });
    expect(await opened.replaceBook(book, "Återställ en kopia")).toMatchObject({ ok: true });
    const snapshots = await opened.snapshots();
    const [newest] = snapshots.ok ? snapshots.value : [];
    if (!newest) throw new Error("no snapshot was kept");
    await opened.restoreSnapshot(newest);
    expect(opened.useBook.getState().past.at(-1)?.label).toBe("Gå tillbaka till före: Återställ en kopia");
  });
});
