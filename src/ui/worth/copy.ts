import { notify } from "../parts/index.ts";
import { worthWords } from "../words/worth.ts";
import { asHtml, asPlain, type Copied } from "./view/copied.ts";

const words = worthWords.copy;

/** Copies a table as plain text and as HTML together, and says so. */
export async function copyTable(table: Copied): Promise<void> {
  const part = (text: string, type: string) => new Blob([text], { type });
  try {
    await navigator.clipboard.write([
      new ClipboardItem({
        "text/plain": part(asPlain(table), "text/plain"),
        "text/html": part(asHtml(table), "text/html"),
      }),
    ]);
    notify(words.done);
  } catch {
    notify(words.failed); // no clipboard here, or the person did not allow it
  }
}
