import { plainDate } from "../price/index.ts";
import type { Language } from "../record/index.ts";
import type { Remake, Workbook } from "../workbook/index.ts";
import { cautionLines } from "./cautions.ts";
import { areChapters, chaptersOf, timeWords } from "./chapters.ts";
import { lines, type Section, type Writeup } from "./document.ts";
import { besideSection, filledLines, standInSection } from "./stand-ins.ts";
import { kitName, type Subject, subjectOf } from "./subject.ts";
import { tagsOf } from "./tags.ts";
import { correctionSection, questionSection, verdictSection } from "./verdict.ts";
import { worthSections } from "./worth.ts";

const openingLimit = 100;

/** At most 100 characters: the result, then how the supplies came to me. A long title gives way. */
function openingOf(subject: Subject): string {
  const { kit, remake, words } = subject;
  const all = kit.lines?.length ?? 0;
  const result = words.result(filledLines(subject), all);
  const disclosure = remake.episode?.disclosure;
  const tail = [result, disclosure ? words.disclosures[disclosure].short : ""].filter(Boolean).join(" ");
  const room = openingLimit - [...tail].length - 2;
  const title = [...(remake.episode?.title || kitName(kit))];
  const short =
    title.length <= room
      ? title.join("")
      : `${title
          .slice(0, room - 1)
          .join("")
          .trimEnd()}…`;
  return `${short}: ${tail}`;
}

function kitSection({ kit, remake, words, language }: Subject): Section {
  const prompts = (remake.prompts ?? []).map(({ text }) => text).filter(Boolean);
  const asked = prompts.length > 0 ? prompts : [kit.prompt].filter(Boolean);
  const disclosure = remake.episode?.disclosure;
  const day = (date: string) => plainDate(date, language);
  return {
    id: "kit",
    title: null,
    called: words.kitSection,
    keep: 99,
    blocks: [
      lines(
        words.kit(kitName(kit), kit.maker, words.month(kit.period)),
        kit.received && words.received,
        asked.length > 0 && words.prompt(asked.join(" / ")),
        words.remade(day(remake.started), remake.finished ? day(remake.finished) : null),
        disclosure && words.disclosures[disclosure].sentence,
      ),
    ],
  };
}

function chapterSection({ remake, words }: Subject): Section {
  const chapters = chaptersOf(remake);
  const rows = areChapters(chapters)
    ? chapters.map(({ seconds, text }) => `${timeWords(seconds)} ${text}`)
    : [];
  return { id: "chapters", title: words.chapters, keep: 95, blocks: [lines(...rows)], verbatim: true };
}

/** Links as they stand: only secure addresses are printed. */
function linkSection({ remake, words }: Subject): Section {
  const links = (remake.episode?.links ?? []).filter(({ url }) => /^https:\/\/\S+$/.test(url ?? ""));
  return {
    id: "links",
    title: words.links,
    keep: 58,
    blocks: [lines(...links.map(({ text, url }) => [text, url].filter(Boolean).join(": ")))],
    verbatim: true,
  };
}

function cautionSection(subject: Subject): Section {
  const { words, language } = subject;
  const played = subject.match.lines.flatMap(({ pick }) => subject.item(pick?.stash)?.supply ?? []);
  const kit = (subject.kit.lines ?? []).map(({ supply }) => supply);
  const said = cautionLines([...kit, ...played], language);
  return {
    id: "cautions",
    title: words.cautionTitle,
    keep: 76,
    blocks: [lines(...said, words.screenColour)],
  };
}

/**
 * The write-up of a remake, as of the workbook's present data; a published one is kept frozen in the remake.
 * @returns null when the remake's kit is not in the workbook, which a checked workbook rules out
 */
export function writeupOf(book: Workbook, remake: Remake, language: Language = "en"): Writeup | null {
  const subject = subjectOf(book, remake, language);
  if (!subject) return null;
  return {
    language,
    opening: openingOf(subject),
    sections: [
      kitSection(subject),
      chapterSection(subject),
      standInSection(subject),
      besideSection(subject),
      ...worthSections(subject),
      verdictSection(subject),
      correctionSection(subject),
      questionSection(subject),
      linkSection(subject),
      cautionSection(subject),
      {
        id: "tags",
        title: null,
        called: subject.words.tagSection,
        keep: 92,
        blocks: [lines(tagsOf(remake.episode?.tags).join(" "))],
        verbatim: true,
      },
    ],
  };
}
