/** Tags as typed, with commas (or number signs) between them; none twice. */
export const readTags = (text: string): readonly string[] => [
  ...new Set(
    text
      .split(/[,#\n]/)
      .map((tag) => tag.trim())
      .filter((tag) => tag !== ""),
  ),
];

export const printTags = (tags: readonly string[] | null | undefined): string => (tags ?? []).join(", ");

/** Whether an address may be printed: secure, and in one piece. */
export const isSecure = (url: string): boolean => /^https:\/\/\S+$/.test(url.trim());
