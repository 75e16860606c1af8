import type { BackupFile } from "../../../store/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";
import { bytesText } from "./bytes.ts";

const words = keepSafeWords.copy;

/** A workbook's name as a part of a file's name: letters, figures and hyphens, at most 40. */
function slug(name: string): string {
  const plain = name
    .normalize("NFC")
    .toLowerCase()
    .replaceAll(/['’]/g, "")
    .replaceAll(/[^\p{L}\p{N}]+/gu, "-");
  return [...plain]
    .slice(0, 40)
    .join("")
    .replaceAll(/^-+|-+$/g, "");
}

/** What a copy is called: `understudy-marits-workbook-2026-05-01.json`; one with photos is an archive, `.zip`. */
export function copyName(
  name: string | null | undefined,
  day: string,
  kind: "json" | "zip" = "json",
): string {
  return ["understudy", slug(name ?? ""), `${day}.${kind}`].filter((piece) => piece !== "").join("-");
}

/** What was written, and whether it could be read back. */
export function writtenText(
  name: string,
  file: Readonly<Pick<BackupFile, "text" | "faults">>,
  records: number,
  format: Formatter = ownFormat,
): string {
  const bytes = new TextEncoder().encode(file.text).length;
  const whole = file.faults.length === 0 ? words.checked : words.faulty;
  return `${words.written(name, records, bytesText(bytes, format))} ${whole}`;
}

/** A copy with photos: how many are in it, and how many the notebook names that are not on this device. */
export type WithPhotos = Readonly<{ bytes: number; whole: boolean; photos: number; missing: number }>;

/** The same of a copy with photos. */
export function writtenWithPhotos(
  name: string,
  { bytes, whole, photos, missing }: WithPhotos,
  records: number,
  format: Formatter = ownFormat,
): string {
  return [
    words.writtenWith(name, records, photos, bytesText(bytes, format)),
    whole ? words.checked : words.faulty,
    ...(missing > 0 ? [words.missing(missing)] : []),
  ].join(" ");
}
