import { refuse } from "./fault.ts";

/** How many bytes tell UTF-16 without a mark, and text from what is none. */
const looked = 65_536;

const zeros = (bytes: Uint8Array, from: 0 | 1): number => {
  let count = 0;
  for (let at = from; at < Math.min(bytes.length, looked); at += 2) if (bytes[at] === 0) count += 1;
  return count;
};

function utf16Of(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  // Every other byte of Latin text in UTF-16 is nought.
  const pairs = Math.min(bytes.length, looked) / 2;
  if (pairs < 2) return null;
  if (zeros(bytes, 1) > pairs * 0.4) return "utf-16le";
  return zeros(bytes, 0) > pairs * 0.4 ? "utf-16be" : null;
}

const decoded = (bytes: Uint8Array, encoding: string, fatal = false): string | null => {
  try {
    return new TextDecoder(encoding, { fatal }).decode(bytes);
  } catch {
    return null;
  }
};

/** What Windows-1252 has where Latin-1 has control characters, from 80 to 9F; the five that it leaves out stay. */
const windows = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

/** Windows-1252 by our own table: some platforms take its name for Latin-1. */
function fromWindows(bytes: Uint8Array): string {
  const latin = decoded(bytes, "latin1") ?? "";
  return latin.replace(/[\u0080-\u009f]/g, (letter) => windows[letter.charCodeAt(0) - 0x80] ?? letter);
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const controls = /[\u0001-\u0008\u000e-\u001f]/g;

/**
 * The text of a file: by its byte order mark, else UTF-16 by its noughts, else UTF-8 where all of it is valid, else
 * Windows-1252, which older programs write.
 * @see WHATWG Encoding (windows-1252 is what Latin-1 is read as)
 */
export function decodeText(bytes: Uint8Array): string {
  const wide = utf16Of(bytes);
  const text = decoded(bytes, wide ?? "utf-8", wide === null) ?? fromWindows(bytes);
  const start = text.slice(0, looked);
  const odd = start.match(controls)?.length ?? 0;
  return odd > start.length * 0.01 + 2 ? refuse("no-table") : text;
}
