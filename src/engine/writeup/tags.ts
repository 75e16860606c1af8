/** Tags of the episode as a platform takes them: no spaces or signs, at most 15, none twice. */
export function tagsOf(tags: readonly string[] | null | undefined): readonly string[] {
  const words = (tags ?? []).map((tag) => tag.normalize("NFC").replace(/[^\p{L}\p{N}_]/gu, ""));
  return [...new Set(words.filter((word) => word !== ""))].slice(0, 15).map((word) => `#${word}`);
}
