import type { Language } from "../../../engine/record/index.ts";
import { type Remake, textLanguage } from "../../../engine/workbook/index.ts";
import { reportedMarkets } from "../../../engine/worth/index.ts";
import {
  asCsv,
  asHtml,
  asMarkdown,
  asText,
  bytesOf,
  defaultLimitBytes,
  type Reminder,
  remindersFor,
  writeupOf,
} from "../../../engine/writeup/index.ts";
import { language as pageLanguage } from "../../../store/index.ts";
import { valueKit } from "../../words/engine/worth.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { kitTitle, type Subject } from "./solve.ts";

const words = remakeWords.writeUp;

export const forms = ["text", "markdown", "csv"] as const;
export type Form = (typeof forms)[number];

/** File endings and media types of the forms. */
export const files: Readonly<Record<Form, Readonly<{ ending: string; type: string }>>> = {
  text: { ending: "txt", type: "text/plain;charset=utf-8" },
  markdown: { ending: "md", type: "text/markdown;charset=utf-8" },
  csv: { ending: "csv", type: "text/csv;charset=utf-8" },
};

export type WriteUpView = Readonly<{
  lead: string;
  leadMore: string;
  /** Of the text, which may be another than the page's. */
  language: Language;
  /** In the form chosen. */
  text: string;
  html: string;
  count: string;
  leftOut: string | null;
  reminders: readonly Reminder[];
  /** Why it cannot be copied yet. */
  notNow: string | null;
  fileName: string;
}>;

/** A limit in bytes as typed; null where it is none. */
export function readLimit(text: string): number | null {
  const plain = text.replace(/[\s.,\u00a0\u202f]/g, "");
  const limit = /^\d+$/.test(plain) ? Number(plain) : 0;
  return Number.isSafeInteger(limit) && limit > 0 ? limit : null;
}

/** The limit kept in the address, or the usual one. */
export const limitOf = (address: string | null): number => readLimit(address ?? "") ?? defaultLimitBytes;

const slug = (title: string): string =>
  title
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "") || words.fileName;

function leadOf(isReady: boolean, leftOut: readonly string[]): string {
  if (!isReady) return words.notYet;
  return leftOut.length > 0 ? words.tooTight : words.ready;
}

/** The finished text and all that is said about it. */
export function writeUpView(subject: Subject, form: Form, limit: number): WriteUpView | null {
  const language = textLanguage(subject.remake) ?? pageLanguage;
  const writeup = writeupOf(subject.book, subject.remake, language);
  if (!writeup) return null;
  const fitted = asText(writeup, limit);
  const reminders = remindersFor(subject.remake, pageLanguage);
  const [blocking] = reminders.filter(({ blocks }) => blocks);
  const text = form === "text" ? fitted.text : form === "markdown" ? asMarkdown(writeup) : asCsv(writeup);
  const size = format.count(form === "text" ? fitted.bytes : bytesOf(text));
  return {
    lead: leadOf(!blocking, fitted.leftOut),
    language,
    leadMore: blocking?.text ?? words.size(format.count(fitted.bytes), format.count(limit)),
    text,
    html: asHtml(writeup),
    count: words.count(size, form === "text" ? format.count(limit) : null),
    leftOut: form === "text" && fitted.leftOut.length > 0 ? words.leftOut(fitted.leftOut) : null,
    reminders,
    notNow: blocking?.text ?? null,
    fileName: `${slug(kitTitle(subject.kit))}.${files[form].ending}`,
  };
}

/** The figures that are frozen with a published text; null where they cannot be worked out. */
export function figuresOf({ book, kit }: Subject): unknown {
  const valued = valueKit(book, kit, reportedMarkets(book));
  return valued.ok ? valued.value.worth : null;
}

type Published = NonNullable<Remake["published"]>[number];

/** A version to keep: its text as it is, and the figures in it. */
export const versionOf = (subject: Subject, text: string, at: string): Published => ({
  at,
  text,
  figures: figuresOf(subject),
});
