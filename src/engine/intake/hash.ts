/** The 64-bit prime is 2^40 + 0x1b3, so that a product needs no more than the figures of a double. */
const low = 0x1b3;
const word = 0x100000000;

/** The bytes of a text in UTF-8; half a pair as U+FFFD. */
function* bytesOf(text: string): Generator<number> {
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code;
    if (point < 0x80) yield point;
    else if (point < 0x800) yield* [0xc0 | (point >> 6), 0x80 | (point & 63)];
    else if (point < 0x10000) yield* [0xe0 | (point >> 12), 0x80 | ((point >> 6) & 63), 0x80 | (point & 63)];
    else
      yield* [
        0xf0 | (point >> 18),
        0x80 | ((point >> 12) & 63),
        0x80 | ((point >> 6) & 63),
        0x80 | (point & 63),
      ];
  }
}

/**
 * The 64-bit FNV-1a hash of a text's UTF-8 bytes, as 16 hex digits. For telling rows apart, not for keeping secrets.
 * @see Fowler, Noll, Vo and Eastlake, "The FNV Non-Cryptographic Hash Algorithm" (draft-eastlake-fnv)
 */
export function fnv1a(text: string): string {
  let [high, rest] = [0xcbf29ce4, 0x84222325]; // the offset basis, in two words
  for (const byte of bytesOf(text)) {
    const mixed = (rest ^ byte) >>> 0;
    const product = mixed * low;
    high = (Math.imul(high, low) + Math.floor(product / word) + (mixed << 8)) >>> 0;
    rest = product >>> 0;
  }
  return high.toString(16).padStart(8, "0") + rest.toString(16).padStart(8, "0");
}
