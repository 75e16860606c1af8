type Node = { key: string; record: unknown; previous: Node | null; next: Node | null };

/** A list that finds, moves and takes out records by key in constant time, for acts that touch thousands. */
export type Ordered = Readonly<{
  /** Whether two records had the same key; the later one goes by another, so that none is lost. */
  repeats: boolean;
  size: () => number;
  get: (key: string) => unknown;
  has: (key: string) => boolean;
  /** The record that follows, or undefined after the last. */
  following: (key: string) => unknown;
  /** Puts a record: `before` undefined keeps its place (new: last), null moves it to the end. */
  put: (key: string, record: unknown, before?: string | null) => void;
  remove: (key: string) => void;
  toArray: () => readonly unknown[];
}>;

/** An ordered working copy of `records`, which stay as they are. */
export function ordered(records: readonly unknown[], keyOf: (record: unknown) => string): Ordered {
  const nodes = new Map<string, Node>();
  const ends: { first: Node | null; last: Node | null } = { first: null, last: null };

  function link(node: Node, next: Node | null) {
    node.next = next;
    node.previous = next ? next.previous : ends.last;
    if (node.previous) node.previous.next = node;
    else ends.first = node;
    if (next) next.previous = node;
    else ends.last = node;
  }

  function unlink({ previous, next }: Node) {
    if (previous) previous.next = next;
    else ends.first = next;
    if (next) next.previous = previous;
    else ends.last = previous;
  }

  function put(key: string, record: unknown, before?: string | null) {
    const known = nodes.get(key);
    const node = known ?? { key, record, previous: null, next: null };
    node.record = record;
    nodes.set(key, node);
    const follower = typeof before === "string" ? (nodes.get(before) ?? null) : null;
    if (known && (before === undefined || follower === node)) return;
    if (known) unlink(known);
    link(node, follower === node ? null : follower);
  }

  function remove(key: string) {
    const node = nodes.get(key);
    if (!node) return;
    unlink(node);
    nodes.delete(key);
  }

  function toArray() {
    const found: unknown[] = [];
    for (let node = ends.first; node; node = node.next) found.push(node.record);
    return found;
  }

  const repeats = { seen: false };
  for (const [index, record] of records.entries()) {
    const key = keyOf(record);
    if (nodes.has(key)) repeats.seen = true;
    put(nodes.has(key) ? `${key}\u001f${index}` : key, record);
  }

  return {
    repeats: repeats.seen,
    size: () => nodes.size,
    get: (key) => nodes.get(key)?.record,
    has: (key) => nodes.has(key),
    following: (key) => nodes.get(key)?.next?.record,
    put,
    remove,
    toArray,
  };
}
