const letters = "0123456789abcdefghjkmnpqrstvwxyz"; // without i, l, o and u, which are misread

/** Text of `length` random letters, 5 bits each; also where the page is not served securely. */
export const randomText = (length: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(length)), (byte) => letters[byte % 32]).join("");

/**
 * A new id such as `st-7k2m9q4x`, not among `taken`.
 * @param prefix st-, kit-, l, …
 * @param random text to append; drawn again for as long as the id is taken
 */
export function newId(
  prefix: string,
  taken: readonly Readonly<{ id: string }>[] | null | undefined,
  random: () => string = () => randomText(8),
): string {
  const ids = new Set((taken ?? []).map(({ id }) => id));
  let id = `${prefix}${random()}`;
  while (ids.has(id)) id = `${prefix}${random()}`;
  return id;
}
