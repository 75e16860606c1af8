import { plainDate } from "../price/index.ts";
import type { Remake, Workbook } from "../workbook/index.ts";
import { cautionLines } from "./cautions.ts";
import { areChapters, chaptersOf, timeWords } from "./chapters.ts";
import { lines, type Section, type Writeup } from "./document.ts";
import { besideSection, filledLines, standInSection } from "./stand-ins.ts";
import { kitName, type Subject, subjectOf } from "./subject.ts";
import { tagsOf } from "./tags.ts";
import { correctionSection, questionSection, verdictSection } from "./verdict.ts";
import { monthWords } from "./words.ts";
import { worthSections } from "./worth.ts";

type Disclosure = NonNullable<NonNullable<Remake["episode"]>["disclosure"]>;

/** How the supplies came to me: short for the opening, and as a sentence. */
const disclosures: Readonly<Record<Disclosure, Readonly<{ short: string; sentence: string }>>> = {
  own: { short: "All mine already.", sentence: "Everything shown was mine already; nobody paid for this." },
  bought: {
    short: "All bought myself.",
    sentence: "I bought everything shown myself; nobody paid for this.",
  },
  gifted: {
    short: "With gifts.",
    sentence: "Some of what is shown was given to me free of charge by its maker or seller.",
  },
  lent: { short: "With loans.", sentence: "Some of what is shown was lent to me by its maker or seller." },
  sponsored: { short: "Advertisement: paid for.", sentence: "This is paid advertising: it was sponsored." },
  affiliate: {
    short: "Advertising links.",
    sentence: "Some links are advertising: I earn a commission when you buy through them.",
  },
};

const openingLimit = 100;

/** At most 100 characters: the result, then how the supplies came to me. A long title gives way. */
function openingOf(subject: Subject): string {
  const { kit, remake } = subject;
  const all = kit.lines?.length ?? 0;
  const result = `${filledLines(subject)} of ${all} from my own shelves.`;
  const tail = [result, remake.episode?.disclosure ? disclosures[remake.episode.disclosure].short : ""]
    .filter(Boolean)
    .join(" ");
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

function kitSection({ kit, remake }: Subject): Section {
  const prompts = (remake.prompts ?? []).map(({ text }) => text).filter(Boolean);
  const asked = prompts.length > 0 ? prompts : [kit.prompt].filter(Boolean);
  const disclosure = remake.episode?.disclosure;
  return {
    id: "kit",
    title: null,
    keep: 99,
    blocks: [
      lines(
        `The kit: ${kitName(kit)}, by ${kit.maker}, ${monthWords(kit.period)}.`,
        kit.received && "I was sent this kit once, so the same items had to stay out of it.",
        asked.length > 0 && `The prompt: ${asked.join(" / ")}`,
        `Remade from ${plainDate(remake.started)}${remake.finished ? ` to ${plainDate(remake.finished)}` : ""}, nothing bought for it.`,
        disclosure && disclosures[disclosure].sentence,
      ),
    ],
  };
}

function chapterSection({ remake }: Subject): Section {
  const chapters = chaptersOf(remake);
  const rows = areChapters(chapters)
    ? chapters.map(({ seconds, text }) => `${timeWords(seconds)} ${text}`)
    : [];
  return { id: "chapters", title: "Chapters", keep: 95, blocks: [lines(...rows)], verbatim: true };
}

/** Links as they stand: only secure addresses are printed. */
function linkSection({ remake }: Subject): Section {
  const links = (remake.episode?.links ?? []).filter(({ url }) => /^https:\/\/\S+$/.test(url ?? ""));
  return {
    id: "links",
    title: "Links",
    keep: 58,
    blocks: [lines(...links.map(({ text, url }) => [text, url].filter(Boolean).join(": ")))],
    verbatim: true,
  };
}

function cautionSection(subject: Subject): Section {
  const played = subject.match.lines.flatMap(({ pick }) => subject.item(pick?.stash)?.supply ?? []);
  const kit = (subject.kit.lines ?? []).map(({ supply }) => supply);
  const words = cautionLines([...kit, ...played]);
  const colour = "A colour on a screen is an approximation: swatch on the real paper before relying on it.";
  return { id: "cautions", title: "Take care", keep: 76, blocks: [lines(...words, colour)] };
}

/**
 * The write-up of a remake, as of the workbook's present data; a published one is kept frozen in the remake.
 * @returns null when the remake's kit is not in the workbook, which a checked workbook rules out
 */
export function writeupOf(book: Workbook, remake: Remake): Writeup | null {
  const subject = subjectOf(book, remake);
  if (!subject) return null;
  return {
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
        keep: 92,
        blocks: [lines(tagsOf(remake.episode?.tags).join(" "))],
        verbatim: true,
      },
    ],
  };
}
