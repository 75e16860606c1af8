import { stashWords } from "../../words/stash.ts";

type Read<T> = Readonly<{ ok: true; value: T | undefined }> | Readonly<{ ok: false; fault: string }>;

/** A stock as typed: a whole number from 0 up. */
export function readCount(text: string): Read<number> {
  const written = text.trim();
  const count = Number(written);
  return /^\d{1,6}$/.test(written)
    ? { ok: true, value: count }
    : { ok: false, fault: stashWords.item.setCount };
}

/** Tags with commas between, none twice; a leading # is no part of them. */
export function readTags(text: string): Read<readonly string[]> {
  const tags = text.split(",").map((tag) => tag.trim().replace(/^#+/, "").trim());
  const kept = [...new Set(tags)].filter((tag) => tag !== "");
  return { ok: true, value: kept.length > 0 ? kept : undefined };
}
