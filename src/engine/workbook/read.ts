import type { Fault } from "../record/index.ts";
import { nestsDeeperThan } from "./depth.ts";
import { faultsOf } from "./faults.ts";
import { faultsBetween } from "./references.ts";
import { formatVersion, type Workbook, WorkbookSchema } from "./schema.ts";

/** A workbook, or every fault that keeps the file from being one. */
export type Reading =
  | Readonly<{ ok: true; workbook: Workbook }>
  | Readonly<{ ok: false; faults: readonly Fault[] }>;

/** The largest file that is read: 50 MB. */
export const sizeLimitBytes = 50_000_000;

const deepest = 64;

const refuse = (place: string, problem: string, remedy: string): Reading => ({
  ok: false,
  faults: [{ place, problem, remedy }],
});

/** A file written by a later version may mean other things by its fields: only the version is worth saying. */
function isNewer(document: unknown): boolean {
  if (typeof document !== "object" || document === null || !("version" in document)) return false;
  return typeof document.version === "number" && document.version > formatVersion;
}

function parse(text: string): Readonly<{ document: unknown }> | Readonly<{ problem: string }> {
  try {
    return { document: JSON.parse(text) };
  } catch (error) {
    return { problem: error instanceof Error ? error.message : "it cannot be parsed" };
  }
}

/** Equal faults once. */
function once(faults: readonly Fault[]): readonly Fault[] {
  const seen = new Set<string>();
  return faults.filter(({ place, problem }) => {
    const key = `${place}\n${problem}`;
    return seen.has(key) ? false : seen.add(key);
  });
}

/**
 * Reads the text of a workbook file.
 * @param bytes the file's size, where it is known; else the length of the text stands in
 * @returns the document itself, unknown fields and all, once everything known in it is right; else all faults.
 *   A file that is not JSON, too large or too deep has the one fault, at `file`.
 */
export function readWorkbook(text: string, bytes: number = text.length): Reading {
  if (bytes > sizeLimitBytes)
    return refuse("file", "larger than 50 MB", "split it, or leave out what is not needed");
  const json = text.startsWith("\uFEFF") ? text.slice(1) : text; // a byte-order mark is no part of JSON
  if (nestsDeeperThan(json, deepest)) return refuse("file", "nested too deep", "choose a workbook file");
  const parsed = parse(json);
  if ("problem" in parsed) {
    return refuse(
      "file",
      `not JSON (${parsed.problem.replaceAll(";", ",")})`,
      "choose a workbook file, or mend it at that spot",
    );
  }
  const { document } = parsed;
  if (isNewer(document)) {
    return refuse(
      "version",
      "written by a newer version",
      `write ${formatVersion}, or read it with a newer Understudy`,
    );
  }
  const checked = WorkbookSchema.safeParse(document);
  const faults = once([
    ...(checked.success ? [] : faultsOf(checked.error.issues, document)),
    ...faultsBetween(document),
  ]);
  if (faults.length > 0) return { ok: false, faults };
  // The document as it came, not zod's copy: that way nothing unknown in it is lost or reordered.
  return { ok: true, workbook: document as Workbook };
}
