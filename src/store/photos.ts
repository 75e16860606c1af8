import type { Workbook } from "../engine/workbook/index.ts";
import type { Picture } from "./journal/index.ts";

/** So much a copy of everything holds, and is read again: what goes beyond it cannot be brought back. */
export const photoLimits = { count: 1_500, bytes: 250_000_000 } as const;

/** Whether one more photo of this size still fits into a copy of everything. */
export function hasRoomFor({ photos }: Workbook, bytes: number): boolean {
  const all = (photos ?? []).reduce((sum, photo) => sum + (photo.bytes ?? 0), bytes);
  return (photos ?? []).length < photoLimits.count && all <= photoLimits.bytes;
}

/** The sums that are nowhere in `where`. A sum is 64 hex digits: where its text stands, it is meant. */
export function unmentioned(sums: readonly string[], where: unknown): readonly string[] {
  const text = JSON.stringify(where ?? null);
  return sums.filter((sum) => !text.includes(sum));
}

const isSum = (sum: string | null | undefined): sum is string => /^[0-9a-f]{64}$/.test(sum ?? "");

/** The SHA-256 of every photo that a book mentions, each once. */
export const photoSums = ({ photos }: Workbook): readonly string[] => [
  ...new Set((photos ?? []).map(({ sha256 }) => sha256).filter(isSum)),
];

/** The SHA-256 of bytes, as 64 hex digits. */
export async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** A photo as it is kept, from its bytes. */
export const pictureOf = async (bytes: Uint8Array<ArrayBuffer>): Promise<Picture> => ({
  sha256: await sha256Of(bytes),
  bytes,
});
