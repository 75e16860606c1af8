/** Why a file is not taken as a photo. The screens say each in words. */
export type PhotoFault =
  | "empty"
  | "too-large"
  | "too-many-pixels"
  | "not-a-photo"
  | "unreadable-kind"
  | "damaged"
  | "not-clean"
  | "lost";

/** What is taken in: unpacked, a picture takes four bytes a pixel. */
export const photoCaps = { bytes: 40_000_000, pixels: 52_000_000 } as const;
