/**
 * Write-up: what gets published of a remake, as text within a platform's limit, Markdown, HTML and CSV.
 *
 * Units    limits in bytes of UTF-8; money with its currency's own decimals; every figure names its basis.
 * Sources  RFC 4180 (CSV), Unicode NFC; the platform limits and the habits of tags and chapters are
 *          common practice, no source.
 * Not here The figures themselves: `price/`, `worth/`, `match/`.
 */
export { type Caution, cautionLines, cautions } from "./cautions.ts";
export { asCsv } from "./csv.ts";
export type { Block, Section, Writeup } from "./document.ts";
export { asHtml } from "./html.ts";
export { asMarkdown } from "./markdown.ts";
export { type Reminder, remindersFor } from "./reminders.ts";
export { asText, bytesOf, defaultLimitBytes, type Fitted } from "./text.ts";
export { writeupOf } from "./writeup.ts";
