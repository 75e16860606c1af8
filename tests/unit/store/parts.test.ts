import { describe, expect, it, vi } from "vitest";
import { isEmpty, recordsIn } from "../../../src/store/count.ts";
import { faultOf, storeFault } from "../../../src/store/faults.ts";
import { askToKeep, storageHealth } from "../../../src/store/health.ts";
import { newId, randomText } from "../../../src/store/ids.ts";
import {
  type Act,
  afterAct,
  inJournalOrder,
  noStacks,
  stacksAfter,
  undoLimit,
} from "../../../src/store/journal/index.ts";
import { localMarker } from "../../../src/store/marker.ts";
import { channelTabs } from "../../../src/store/tabs.ts";
import { bookOf, item } from "./books.ts";

describe("ids", () => {
  it("are drawn again until they are new in their list", () => {
    const draws = ["aa", "bb", "cc"];
    const random = () => draws.shift() ?? "";
    expect(newId("st-", [{ id: "st-aa" }, { id: "st-bb" }], random)).toBe("st-cc");
  });
  it("need no list, and are letters and digits that are not misread", () => {
    expect(newId("kit-", null)).toMatch(/^kit-[0-9a-hjkmnp-tv-z]{8}$/);
    expect(randomText(200)).toMatch(/^[0-9a-hjkmnp-tv-z]{200}$/);
  });
});

describe("a storage error", () => {
  const named = (name: string, inner?: unknown) => Object.assign(new Error(name), { name, inner });
  it.each([
    { error: named("QuotaExceededError"), kind: "quota" },
    { error: named("AbortError", named("QuotaExceededError")), kind: "quota" }, // how Chromium has it, by way of Dexie
    { error: named("BulkError", named("AbortError", named("QuotaExceededError"))), kind: "quota" },
    { error: named("AbortError"), kind: "interrupted" },
    { error: named("UnknownError"), kind: "interrupted" },
    { error: named("DatabaseClosedError"), kind: "closed" },
    { error: named("InvalidStateError"), kind: "closed" },
    { error: named("MissingAPIError"), kind: "unavailable" },
    { error: named("OpenFailedError", named("SecurityError")), kind: "unavailable" },
    { error: "thrown text", kind: "interrupted" },
    { error: null, kind: "interrupted" },
  ])("$error.name is told as $kind", ({ error, kind }) => {
    expect(faultOf(error)).toEqual(storeFault(kind as "quota"));
  });
  it("that holds itself is looked through once", () => {
    const error: { name: string; inner?: unknown } = { name: "AbortError" };
    error.inner = error;
    expect(faultOf(error).kind).toBe("interrupted");
  });
  it.each(["quota", "interrupted", "closed", "newer", "stale", "damaged", "unavailable"] as const)(
    "%s says what, what is safe, and two ways out",
    (kind) => {
      const { problem, safe, remedy } = storeFault(kind);
      expect([problem, safe, remedy].every((text) => text.endsWith("."))).toBe(true);
      expect(remedy).toMatch(/, (or|then|and) /);
    },
  );
});

describe("the marker", () => {
  const known = { records: 3, stash: 2, kits: 1, at: "2026-05-02T10:00:00.000Z" };
  function held() {
    const kept = new Map<string, string>();
    return {
      kept,
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
    };
  }
  it("gives back what was written", () => {
    const marker = localMarker(() => storage);
    const storage = held();
    expect(marker.read()).toBeNull();
    marker.write(known);
    expect(marker.read()).toEqual(known);
  });
  it.each(["{", '{"records":"3"}', "[]"])("makes nothing of %s", (text) => {
    const storage = held();
    storage.setItem("understudy.last-kept", text);
    expect(localMarker(() => storage).read()).toBeNull();
  });
  it("does without local storage where that is forbidden", () => {
    const marker = localMarker(() => {
      throw new DOMException("no", "SecurityError");
    });
    marker.write(known);
    expect(marker.read()).toBeNull();
  });
});

describe("tabs", () => {
  it("hear what another tells, and nothing but revisions", async () => {
    const [one, two] = [channelTabs("tabs-test"), channelTabs("tabs-test")];
    const heard: number[] = [];
    two.listen((revision) => heard.push(revision));
    const stranger = new BroadcastChannel("tabs-test");
    stranger.postMessage("not a revision");
    one.tell(4);
    await vi.waitFor(() => expect(heard).toEqual([4]));
    for (const each of [one, two, stranger]) each.close();
  });
  it("are silent in a browser without channels", () => {
    vi.stubGlobal("BroadcastChannel", undefined);
    const tabs = channelTabs("none");
    tabs.listen(() => {});
    tabs.tell(1);
    tabs.close();
    vi.unstubAllGlobals();
    expect(typeof BroadcastChannel).toBe("function");
  });
});

describe("storage health", () => {
  it("is what the browser says", async () => {
    const storage = {
      persisted: async () => true,
      estimate: async () => ({ usage: 5, quota: 100 }),
      persist: async () => true,
    };
    expect(await storageHealth(storage)).toEqual({ promised: true, usedBytes: 5, quotaBytes: 100 });
    expect(await askToKeep(storage)).toBe(true);
  });
  it.each([
    { name: "says nothing", storage: undefined },
    { name: "knows nothing", storage: {} },
    {
      name: "fails",
      storage: {
        persisted: () => Promise.reject(new Error()),
        estimate: () => Promise.reject(new Error()),
        persist: () => Promise.reject(new Error()),
      },
    },
  ])("is unknown where the browser $name", async ({ storage }) => {
    expect(await storageHealth(storage)).toEqual({ promised: null, usedBytes: null, quotaBytes: null });
    expect(await askToKeep(storage)).toBe(false);
  });
});

describe("counting", () => {
  it("counts the records of all lists", () => {
    expect(recordsIn(bookOf({ stash: [item("a"), item("b")], requests: [{ id: "r" }], kits: null }))).toBe(3);
  });
  it("calls a book empty that has only a name", () => {
    expect([isEmpty(bookOf({ name: "Marit's" })), isEmpty(bookOf({ stash: [item("a")] }))]).toEqual([
      true,
      false,
    ]);
  });
});

const act = (counter: number, extra: Partial<Act> = {}): Act => ({
  id: `dev:${counter}`,
  device: "dev",
  counter,
  at: "2026-05-02T10:00:00.000Z",
  label: `Act ${counter}`,
  kind: "do",
  changes: [],
  inverse: [],
  ...extra,
});

describe("what can be undone", () => {
  const ids = (entries: readonly { id: string }[]) => entries.map(({ id }) => id);

  it("is at most the last thousand acts", () => {
    const stacks = stacksAfter(Array.from({ length: undoLimit + 5 }, (_, index) => act(index + 1)));
    expect(stacks.past).toHaveLength(1_000);
    expect(stacks.past[0]?.id).toBe("dev:6");
  });

  it("follows undo and redo, each by the latest act about it", () => {
    const undone = afterAct(stacksAfter([act(1), act(2)]), act(3, { kind: "undo", of: "dev:2" }));
    expect([ids(undone.past), ids(undone.future)]).toEqual([["dev:1"], ["dev:2"]]);
    expect(undone.future[0]?.latest).toBe("dev:3");
    const redone = afterAct(undone, act(4, { kind: "redo", of: "dev:2" }));
    expect(redone).toMatchObject({ past: [{ id: "dev:1" }, { id: "dev:2", latest: "dev:4" }], future: [] });
    expect(afterAct(undone, act(4)).future).toEqual([]);
  });

  it("is not confused by an undo whose act came before what was read", () => {
    expect(afterAct(noStacks, act(9, { kind: "undo", of: "dev:3" }))).toMatchObject({
      past: [],
      future: [{ id: "dev:3" }],
    });
  });
});

it("acts of two devices have one order, whatever their clocks say", () => {
  const acts = [
    act(2, { device: "b" }),
    act(1, { device: "b" }),
    act(2, { device: "a" }),
    act(3, { at: "1999" }),
  ];
  const order = acts.toSorted(inJournalOrder).map(({ device, counter }) => `${device}${counter}`);
  expect(order).toEqual(["b1", "a2", "b2", "dev3"]);
  expect(inJournalOrder(act(1), act(1))).toBe(0);
});
