const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * CRC-32 of a text's UTF-8 bytes, as eight hex digits. It notices every change of up to 32 bits in a row, so
 * every damaged byte; it does not prove who wrote the file.
 * @see ISO/IEC 8802-3 (Ethernet), also used by ZIP and PNG: polynomial 0x04C11DB7, reflected
 */
export function crc32(text: string): string {
  let sum = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) sum = (sum >>> 8) ^ (table[(sum ^ byte) & 0xff] ?? 0);
  return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, "0");
}
