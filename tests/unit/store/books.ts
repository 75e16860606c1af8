import type { Workbook } from "../../../src/engine/workbook/index.ts";
import type { Change } from "../../../src/store/journal/index.ts";
import type { Draft } from "../../../src/store/repository.ts";

export const item = (id: string, extra: object = {}) => ({
  id,
  supply: { family: "paint" as const, name: `Gouache, ${id}` },
  ...extra,
});

export const stashOf = (count: number) =>
  Array.from({ length: count }, (_, index) => item(`st-${String(index).padStart(4, "0")}`));

export const bookOf = (fields: Partial<Workbook> = {}): Workbook => ({
  format: "understudy-workbook",
  version: 1,
  ...fields,
});

export const put = (id: string, extra: object = {}): Change => ({
  op: "put",
  list: "stash",
  id,
  record: item(id, extra),
});

export const setPlace = (id: string, value: string): Change => ({
  op: "set",
  list: "stash",
  id,
  path: ["place"],
  value,
});

export const draft = (changes: Draft["changes"], extra: Partial<Draft> = {}): Draft => ({
  label: "An act",
  kind: "do",
  at: "2026-05-02T10:00:00.000Z",
  changes,
  ...extra,
});

/** The value of an outcome that is to be good. */
export function value<T>(outcome: { ok: true; value: T } | { ok: false; fault: { problem: string } }): T {
  if (!outcome.ok) throw new Error(outcome.fault.problem);
  return outcome.value;
}
