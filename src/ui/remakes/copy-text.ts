/**
 * Puts plain text and HTML on the clipboard together, so that a video description takes the one and a mail or
 * document the other.
 * @returns whether both got there, only the plain text, or nothing
 */
export async function copyBoth(text: string, html: string): Promise<"both" | "plain" | "none"> {
  const blob = (content: string, type: string) => new Blob([content], { type });
  try {
    await navigator.clipboard.write([
      new ClipboardItem({ "text/plain": blob(text, "text/plain"), "text/html": blob(html, "text/html") }),
    ]);
    return "both";
  } catch {
    return (
      navigator.clipboard // missing where the page is not served securely
        ?.writeText(text)
        .then(() => "plain" as const)
        .catch(() => "none" as const) ?? "none"
    );
  }
}
