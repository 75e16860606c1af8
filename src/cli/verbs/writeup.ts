import { type Language, languages } from "../../engine/record/index.ts";
import {
  asCsv,
  asHtml,
  asMarkdown,
  asText,
  defaultLimitBytes,
  type Writeup,
  writeupOf,
} from "../../engine/writeup/index.ts";
import { byId, workbookFrom } from "../input.ts";
import { Misuse } from "../io.ts";
import { textOption, type Values, type Verb } from "../verb.ts";

type Render = (writeup: Writeup, limit: number) => string;

const renderers: ReadonlyMap<string, Render> = new Map([
  ["text", (writeup: Writeup, limit: number) => asText(writeup, limit).text],
  ["markdown", asMarkdown],
  ["html", asHtml],
  ["csv", asCsv],
]);

function limitFrom(options: Values): number {
  const text = textOption(options, "limit");
  if (text === undefined) return defaultLimitBytes;
  if (!/^\d+$/.test(text)) throw new Misuse("--limit takes a whole number of bytes");
  return Number(text);
}

function languageFrom(options: Values): Language {
  const text = textOption(options, "language") ?? "en";
  const language = languages.find((known) => known === text);
  if (!language) throw new Misuse(`--language takes ${languages.join(" or ")}`);
  return language;
}

export const writeup: Verb = {
  usage: "FILE --remake ID [--as text|markdown|html|csv] [--limit BYTES] [--language en|sv]",
  operands: 1,
  options: {
    remake: { type: "string" },
    as: { type: "string" },
    limit: { type: "string" },
    language: { type: "string" },
  },
  hasJson: false,
  run: ({ operands, options, io }) => {
    const render = renderers.get(textOption(options, "as") ?? "text");
    if (!render) throw new Misuse("--as takes text, markdown, html or csv");
    const limit = limitFrom(options);
    const language = languageFrom(options);
    const book = workbookFrom(io, operands[0]);
    const remake = byId(book.remakes, textOption(options, "remake"), "remake");
    const written = writeupOf(book, remake, language);
    if (!written) throw new Misuse("this remake's kit is not in the workbook");
    return { json: () => null, text: () => render(written, limit) };
  },
};
