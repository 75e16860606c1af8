import { fail, type Outcome, ok } from "../../engine/record/index.ts";
import type { Match, Path } from "./change.ts";
import { isFields, own, withField } from "./fields.ts";
import { keyBy } from "./keys.ts";

const gone = (what: string) =>
  fail(what, "it is no longer there", "look at what is there now, and try again");

const nameOf = (step: string | Match): string =>
  typeof step === "string" ? step : Object.values(step).join(" ");

/** Whether `record` holds what `match` says. */
export function matches(record: unknown, match: Match): boolean {
  const names = Object.keys(match);
  return isFields(record) && keyBy(names, record) === keyBy(names, match);
}

function child(node: unknown, step: string | Match): unknown {
  if (typeof step === "string") return isFields(node) ? own(node, step) : undefined;
  return Array.isArray(node) ? node.find((element) => matches(element, step)) : undefined;
}

/** What stands at `path`, or undefined where the way ends early. */
export const read = (node: unknown, path: Path): unknown => path.reduce(child, node);

/** The part of `path` up to the first thing that is not there yet, and what stands there (null or undefined). */
export function untilGap(node: unknown, path: Path): Readonly<{ path: Path; value: unknown }> {
  const length = path.findIndex((_, index) => (read(node, path.slice(0, index + 1)) ?? null) === null);
  const reached = length === -1 ? path : path.slice(0, length + 1);
  return { path: reached, value: read(node, reached) };
}

type Edit = (target: unknown) => Outcome<unknown>;

function rewriteField(node: unknown, name: string, rest: Path, edit: Edit): Outcome<unknown> {
  const missing = node === undefined || node === null;
  const base: unknown = missing ? {} : node;
  if (!isFields(base)) return gone(name);
  const inner = rewrite(own(base, name), rest, edit);
  if (!inner.ok) return inner;
  return ok<unknown>(missing && inner.value === undefined ? node : withField(base, name, inner.value));
}

function rewriteElement(node: unknown, match: Match, rest: Path, edit: Edit): Outcome<unknown> {
  if (!Array.isArray(node)) return gone(nameOf(match));
  const index = node.findIndex((element) => matches(element, match));
  if (index === -1) return gone(nameOf(match));
  const inner = rewrite(node[index], rest, edit);
  return inner.ok ? ok<unknown>(node.with(index, inner.value)) : inner;
}

/**
 * `node` with `edit` done to what stands at `path`; records on the way that are missing come into being.
 * @returns a fault when the way leads through something that is gone
 */
export function rewrite(node: unknown, path: Path, edit: Edit): Outcome<unknown> {
  const [step, ...rest] = path;
  if (step === undefined) return edit(node);
  return typeof step === "string"
    ? rewriteField(node, step, rest, edit)
    : rewriteElement(node, step, rest, edit);
}

/** Whether setting the last field of `path` to `value` would make its element another one (`{ id }`, then `id`). */
export function renames(path: Path, value: unknown): boolean {
  const [element, name] = path.slice(-2);
  return (
    typeof element === "object" &&
    typeof name === "string" &&
    Object.hasOwn(element, name) &&
    element[name] !== (value ?? null)
  );
}

export const recordGone = (id: string) => gone(id);
