/** Two numbers or names that belong together, one of each line. */
export type Pair = readonly [string, string];

// The first of these that a line has parts it: what a spreadsheet copies, then what people write.
const partings = [
  /\t+/,
  /\s*(?:=|→|⇒|->|=>|↔|<->)\s*/u,
  /\s*[;|]\s*/,
  /\s{2,}/,
  /\s*,\s*/,
  /\s+[–—-]\s+/,
  /\s+/,
];

function pairIn(line: string): Pair | null {
  for (const parting of partings) {
    const parts = line.split(parting).filter((part) => part !== "");
    if (parts.length === 1) continue;
    const [one, other] = parts;
    return parts.length === 2 && one && other ? [one, other] : null;
  }
  return null;
}

/**
 * Pairs as people keep them, one a line: cells of a spreadsheet, "12 = 340", "moss; sea green".
 * @returns the pairs in order, each once, and the lines that are no pair, as written
 */
export function readPairs(text: string): Readonly<{ pairs: readonly Pair[]; odd: readonly string[] }> {
  const pairs = new Map<string, Pair>();
  const odd: string[] = [];
  for (const line of text.split(/\r\n|\n|\r/).map((one) => one.trim())) {
    if (line === "") continue;
    const pair = pairIn(line);
    if (pair) pairs.set(JSON.stringify(pair), pair);
    else odd.push(line);
  }
  return { pairs: [...pairs.values()], odd };
}
