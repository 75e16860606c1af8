import type * as z from "zod/mini";
import type { Fault } from "../record/index.ts";
import { AnyFamilySchema } from "../supply/index.ts";
import { placeOf } from "./place.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

const kinds: ReadonlyMap<string, string> = new Map([
  ["string", "text in quotes"],
  ["number", "a number, without quotes"],
  ["int", "a whole number, without quotes"],
  ["boolean", "true or false"],
  ["array", "a list in [ ]"],
  ["tuple", "a list in [ ]"],
  ["object", "a record in { }"],
  ["record", "a record in { }"],
]);

function kindOf(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a record";
  return typeof value === "string"
    ? "text"
    : typeof value === "boolean"
      ? "true or false"
      : `the number ${value}`;
}

/** The value at a path of the document, or undefined where the path leads nowhere. */
function valueAt(document: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, step) => {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    return Reflect.get(value, step);
  }, document);
}

const short = (value: unknown): string => {
  const text = JSON.stringify(value) ?? "nothing";
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
};

function wrongType(issue: z.core.$ZodIssueInvalidType, value: unknown): Omit<Fault, "place"> {
  const wanted = kinds.get(issue.expected) ?? issue.expected;
  if (value === undefined) return { problem: "missing", remedy: `give ${wanted}` };
  const isFraction = issue.expected === "int" && typeof value === "number";
  return {
    problem: isFraction ? `${value} is not whole` : `${kindOf(value)} where it does not fit`,
    remedy: `write ${wanted}`,
  };
}

function wrongWord(words: readonly unknown[], value: unknown): Omit<Fault, "place"> {
  const list = words.map((word) => JSON.stringify(word)).join(", ");
  const remedy = words.length === 1 ? `write ${list}` : `write one of ${list}`;
  return { problem: value === undefined ? "missing" : `${short(value)} is not known here`, remedy };
}

function said(message: string): Omit<Fault, "place"> {
  const [problem = message, remedy = "put it right"] = message.split("; ");
  return { problem, remedy };
}

/** Of a field that may take two forms, the form that the value was meant for: the one that fails deepest. */
function meant(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (issues: readonly Issue[]) => Math.max(-1, ...issues.map((issue) => issue.path.length));
  return branches.toSorted((a, b) => depth(b) - depth(a))[0] ?? [];
}

/** The words that choose a form (the families): zod's issue carries them, its type does not say so. */
function wordsFor(issue: Issue): readonly unknown[] {
  const words: unknown = Reflect.get(issue, "options");
  return Array.isArray(words) ? words : [];
}

/** What is wrong besides in a supply of no known family: zod stops at the family, so all that families share is asked again. */
function besideFamily(document: unknown, supply: Path): readonly Fault[] {
  const { error } = AnyFamilySchema.safeParse(valueAt(document, supply));
  return error ? faultsOfIssues(error.issues, document, supply) : [];
}

/** A list where text should be is also "too short" to zod: once is enough. */
function withoutEchoes(issues: readonly Issue[]): readonly Issue[] {
  const wrong = new Set(
    issues.filter(({ code }) => code === "invalid_type").map(({ path }) => placeOf(path)),
  );
  return issues.filter(({ code, path }) => code !== "too_small" || !wrong.has(placeOf(path)));
}

/** Faults of one issue, placed at the innermost wrong field. */
function faultsOfIssue(issue: Issue, document: unknown, above: Path): readonly Fault[] {
  const path = [...above, ...issue.path];
  const place = placeOf(path);
  const value = valueAt(document, path);
  switch (issue.code) {
    case "invalid_type":
      return [{ place, ...wrongType(issue, value) }];
    case "invalid_value":
      return [{ place, ...wrongWord(issue.values, value) }];
    case "invalid_union":
      if (issue.errors.length > 0) return faultsOfIssues(meant(issue.errors), document, path);
      return [{ place, ...wrongWord(wordsFor(issue), value) }, ...besideFamily(document, path.slice(0, -1))];
    case "invalid_key":
      return issue.issues.map((inner) => ({ place, ...said(inner.message) }));
    case "too_big":
    case "too_small":
      if (issue.origin === "array")
        return [{ place, problem: "a list of the wrong length", remedy: "write two numbers" }];
      return [{ place, ...said(issue.message) }];
    default:
      return [{ place, ...said(issue.message) }];
  }
}

function faultsOfIssues(issues: readonly Issue[], document: unknown, above: Path): readonly Fault[] {
  return withoutEchoes(issues).flatMap((issue) => faultsOfIssue(issue, document, above));
}

/** Every issue of a failed parse as a fault a person can put right. */
export const faultsOf = (issues: readonly Issue[], document: unknown): readonly Fault[] =>
  faultsOfIssues(issues, document, []);
