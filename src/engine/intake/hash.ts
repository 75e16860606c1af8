const prime = 0x100000001b3n;
const offset = 0xcbf29ce484222325n;

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
  let hash = offset;
  for (const byte of bytesOf(text)) hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * prime);
  return hash.toString(16).padStart(16, "0");
}
