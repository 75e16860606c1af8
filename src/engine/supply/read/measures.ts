import { sheetMm } from "../paper.ts";
import { type Family, grades, lightfastness } from "../traits.ts";
import { agree } from "./agree.ts";
import { amount, toNumber } from "./amount.ts";
import { matches, type Span, whole } from "./phrase.ts";
import { type Found, found, isList } from "./piece.ts";
import type { Says } from "./says/index.ts";
import { inchWords, looseWords, sheetWords } from "./vocabulary.ts";

type Reading = readonly [value: unknown, reads: string];

type Rule = Readonly<{
  field: string;
  families: readonly Family[];
  pattern: RegExp;
  /** The value and its reading, or null when the match is not one after all. */
  read: (match: RegExpExecArray, says: Says) => Reading | null;
}>;

const number = `(${amount})`;
const unit = `(mm|cm|${inchWords}|”|″|")`;

// 25.4 mm to the inch exactly (international yard and pound agreement, 1959).
const mmPer = (name: string | undefined): number => {
  const word = name?.toLowerCase();
  if (word === "mm") return 1;
  return word === "cm" ? 10 : 25.4;
};

/** To hundredths of a millimetre: 8.5 in is 215.9, not a hair beside it. */
const inMm = (text: string | undefined, name: string | undefined): number =>
  Math.round(toNumber(text) * mmPer(name) * 100) / 100;

/** More than any pad has, and far below where whole numbers end. */
const mostSheets = 1_000_000;

const measure = (value: number, reads: string, most = Number.MAX_VALUE): Reading | null =>
  value > 0 && value <= most ? [value, reads] : null;

function typedSize(match: RegExpExecArray, says: Says): Reading | null {
  const [, one, oneUnit, other, otherUnit] = match;
  const size = [inMm(one, oneUnit ?? otherUnit), inMm(other, otherUnit)];
  return size.every((side) => side > 0 && Number.isFinite(side))
    ? [size, `${size.map(says.figure).join(" × ")} mm`]
    : null;
}

function namedSize(match: RegExpExecArray, says: Says): Reading | null {
  const name = (match[1] ?? "").replace(/\s+/g, "");
  const sheet = sheetMm(name);
  const written = /^[abc]\d/i.test(name) ? name.toUpperCase() : name.toLowerCase();
  return sheet ? [written, `${written}, ${sheet.map(says.figure).join(" × ")} mm`] : null;
}

/** Wider than this and it is the length of a pen, or a word that only looks like a unit: "set of 3 in black". */
const widestMm: Readonly<Partial<Record<Family, number>>> = { liner: 10, brush: 250 };

function width(family: Family, says: Says, written: string | undefined, name = "mm"): Reading | null {
  const mm = inMm(written, name);
  return measure(mm, `${says.figure(mm)} mm`, widestMm[family]);
}

const paper = ["paper"] as const;

/** A number of things has no width ("pack of 3 in box"), and of two widths neither is the one ("10 and 20 mm"). */
const alone = "(?<!\\b(?:of|om|med)\\s+)(?<!\\d\\s*(?:&|and|och|or|eller|to|till)\\s*)";

/** Sizes, weights, volumes, grades and ratings, each with the families it makes sense for. */
const rules: readonly Rule[] = [
  {
    field: "traits.size",
    families: paper,
    pattern: whole(`${number}\\s*${unit}?\\s*(?:x|×|\\*|by)\\s*${number}\\s*${unit}`),
    read: typedSize,
  },
  {
    field: "traits.size",
    families: paper,
    pattern: whole(
      "(?:din\\s+)?([abc](?:10|\\d)|letter|legal|tabloid|ledger|half[ -]letter)(?:\\s+size)?(?!\\+)",
    ),
    read: namedSize,
  },
  {
    field: "traits.gsm",
    families: paper,
    pattern: whole(`${number}\\s*(?:gsm|g\\s?/\\s?m\\^?2|g\\s?/\\s?m²|g/qm|g/sqm|g/kvm|grams?|gr|g)`),
    read: ([, written], says) => measure(toNumber(written), `${says.figure(toNumber(written))} g/m²`),
  },
  {
    field: "traits.sheets",
    families: paper,
    pattern: whole(
      `(?<!\\d[.,])(\\d+)(?:\\s*-?\\s*(?:${sheetWords})|(?=\\s+(?:${looseWords})\\s+(?:${sheetWords})(?!\\p{L})))|(?<=(?<!\\d\\s*|\\d\\s+(?:${looseWords})\\s+)(?:${sheetWords})\\s*:?\\s*)(\\d+)(?!\\s*(?:[x×.,]|${unit}|g))`,
    ),
    read: ([, count, after], says) =>
      measure(Number(count ?? after), says.sheets(Number(count ?? after)), mostSheets),
  },
  {
    field: "traits.ml",
    families: ["paint", "ink"],
    pattern: whole(
      `${number}\\s*(ml|cl|dl|millilit(?:re|er)s?|(?:us\\s+)?fl(?:uid)?\\.?\\s*(?:oz|ounces?)|oz|ounces?)`,
    ),
    read: ([, written, name], says) => {
      const ml = Math.round(toNumber(written) * mlPer(name) * 100) / 100;
      return measure(ml, `${says.figure(ml)} ml`);
    },
  },
  {
    field: "traits.widthMm",
    families: ["brush"],
    pattern: whole(`${alone}${number}\\s*-?\\s*${unit}(?!\\s+\\d)`),
    read: ([, written, name], says) => width("brush", says, written, name),
  },
  {
    // A liner's "0.3" is its width: common practice, no source.
    field: "traits.widthMm",
    families: ["liner"],
    pattern: whole(`${alone}(${amount})\\s*-?\\s*(mm|cm)|(?<!\\p{N}[/–-])(0[.,]\\d+)(?![/–-]\\p{N})`),
    read: ([, written, name, bare], says) => width("liner", says, written ?? bare, name),
  },
  {
    field: "traits.grade",
    families: ["graphite"],
    pattern: whole("(?:10|[2-9])\\s?[hb]|hb|[fhb]"),
    read: ([written], says) => {
      const grade = written.toUpperCase().replace(/\s/g, "");
      return grades.includes(grade) ? [grade, says.grade(grade)] : null;
    },
  },
  {
    field: "traits.pigments",
    families: ["paint"],
    // Colour Index usage and hue letters, a number, and a number after a colon in some.
    pattern: whole("[PN](?:Bk|Br|B|G|M|O|R|V|W|Y)\\d{1,3}(?::\\d)?"),
    read: ([written], says) => {
      const name = pigmentName(written);
      return [name, says.pigment(name)];
    },
  },
  {
    field: "lightfast",
    families: ["marker", "liner", "colour-pencil", "paint", "ink", "pastel"],
    pattern: whole("(?:lightfast(?:ness)?|ljusäkthet|astm)\\s+(iii|ii|iv|i|v)|(?:blue wool|bw)\\s*([1-8])"),
    read: ([, astm, wool], says) => {
      const rating = astm?.toUpperCase() ?? `bw${wool}`;
      return (lightfastness as readonly string[]).includes(rating) ? [rating, says.lightfast(rating)] : null;
    },
  },
];

/** Colour Index names are written PBk7 and PY42, also where the line is all capitals. */
const pigmentName = (written: string): string =>
  written.slice(0, 2).toUpperCase() + written.slice(2).toLowerCase();

/** Packs of ink and paint mean the US fluid ounce, 29.5735 ml (NIST Handbook 44, appendix C): the trade's, no source. */
const mlPerOunce = 29.5735;

function mlPer(name: string | undefined): number {
  const word = name?.toLowerCase() ?? "";
  if (/oz|ounce/.test(word)) return mlPerOunce;
  return { cl: 10, dl: 100 }[word] ?? 1;
}

function readRule(text: string, rule: Rule, says: Says, taken: readonly Span[]): readonly Found[] {
  return matches(text, rule.pattern, taken).flatMap((match) => {
    const reading = rule.read(match, says);
    return reading ? [found(match, rule.field, ...reading)] : [];
  });
}

/** Where a line tells of several things, none of them is the one: "2B, 4B, 6B". */
const told: ReadonlySet<string> = new Set(["traits.grade", "traits.widthMm"]);

function ofOneField(hits: readonly Found[]): readonly Found[] {
  const [first] = hits;
  if (!first || isList(first.field)) return hits;
  const same = hits.filter(({ value }) => agree(first.value, value));
  return told.has(first.field) && same.length < hits.length ? [] : same;
}

/** Every measure in the line that its family can have; of two for one field the first, pigments all. */
export function readMeasures(
  text: string,
  family: Family,
  says: Says,
  taken: readonly Span[],
): readonly Found[] {
  const all: Found[] = [];
  for (const rule of rules.filter(({ families }) => families.includes(family))) {
    const before = all.filter(({ field }) => field === rule.field);
    const hits = readRule(text, rule, says, [...taken, ...all]);
    if (before.length === 0 || isList(rule.field)) all.push(...ofOneField(hits));
    else all.push(...hits.filter(({ value }) => agree(before[0]?.value, value)));
  }
  return all;
}

/** "A4" or "90 gsm" or "20 sheets" say paper; "24 x 32 cm" or "90 g" could be anything. */
const saysPaper = ({ field, text }: Found): boolean =>
  field === "traits.sheets" || /^din|^[abc]\d|gsm|m2|m²|qm|kvm/i.test(text);

/** A family told by a measure alone: "A4, 90 gsm" is paper, "4B" a pencil. */
export function familyByMeasure(text: string, says: Says, taken: readonly Span[]): Family | null {
  if (readMeasures(text, "paper", says, taken).some(saysPaper)) return "paper";
  const grade = readMeasures(text, "graphite", says, taken)[0];
  return grade && /^(hb|\d+\s?[hb])$/i.test(grade.text) ? "graphite" : null;
}
