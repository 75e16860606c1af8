import { sheetMm } from "../paper.ts";
import { type Family, grades, lightfastness } from "../traits.ts";
import { matches, type Span, whole } from "./phrase.ts";
import { type Found, found, isList } from "./piece.ts";

type Rule = Readonly<{
  field: string;
  families: readonly Family[];
  pattern: RegExp;
  /** The value and its reading, or null when the match is not one after all. */
  read: (match: RegExpExecArray) => readonly [unknown, string] | null;
}>;

const number = "(\\d+(?:[.,]\\d+)?)";
const unit = '(mm|cm|inches|inch|in|”|″|")';

/** A number as typed, with a decimal point or comma. */
const toNumber = (text: string | undefined): number => Number((text ?? "").replace(",", "."));

// 25.4 mm to the inch exactly (international yard and pound agreement, 1959).
const mmPer = (name: string | undefined): number => {
  const word = name?.toLowerCase();
  if (word === "mm") return 1;
  return word === "cm" ? 10 : 25.4;
};

/** To hundredths of a millimetre: 8.5 in is 215.9, not a hair beside it. */
const inMm = (text: string | undefined, name: string | undefined): number =>
  Math.round(toNumber(text) * mmPer(name) * 100) / 100;

const measure = (value: number, reads: string) => (value > 0 ? ([value, reads] as const) : null);

function typedSize(match: RegExpExecArray): readonly [unknown, string] | null {
  const [, one, oneUnit, other, otherUnit] = match;
  const size = [inMm(one, oneUnit ?? otherUnit), inMm(other, otherUnit)];
  return size.every((side) => side > 0) ? [size, `${size.join(" × ")} mm`] : null;
}

function namedSize(match: RegExpExecArray): readonly [unknown, string] | null {
  const name = (match[1] ?? "").replace(/\s+/g, "");
  const sheet = sheetMm(name);
  const written = /^[abc]\d/i.test(name) ? name.toUpperCase() : name.toLowerCase();
  return sheet ? [written, `${written}, ${sheet.join(" × ")} mm`] : null;
}

function width(match: RegExpExecArray): readonly [unknown, string] | null {
  const [, over, under, plain, name] = match;
  const mm = over ? Math.round((toNumber(over) / toNumber(under)) * 2540) / 100 : inMm(plain, name);
  return Number.isFinite(mm) ? measure(mm, `${mm} mm`) : null;
}

const paper = ["paper"] as const;
const wide = ["liner", "brush"] as const;

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
    pattern: whole("(?:din\\s+)?([abc](?:10|\\d)|letter|legal|tabloid|ledger|half[ -]letter)(?:\\s+size)?"),
    read: namedSize,
  },
  {
    field: "traits.gsm",
    families: paper,
    pattern: whole(`${number}\\s*(?:gsm|g/m2|g/m²|g/qm|g/sqm|gr|g)`),
    read: (match) => measure(toNumber(match[1]), `${toNumber(match[1])} g/m²`),
  },
  {
    field: "traits.sheets",
    families: paper,
    pattern: whole("(\\d+)\\s*(?:-\\s*)?(?:sheets?|leaves|leaf|shts?)"),
    read: (match) => measure(Number(match[1]), match[1] === "1" ? "1 sheet" : `${Number(match[1])} sheets`),
  },
  {
    field: "traits.ml",
    families: ["paint", "ink"],
    pattern: whole(`${number}\\s*(ml|cl|millilit(?:re|er)s?)`),
    read: (match) => {
      const ml = toNumber(match[1]) * (match[2]?.toLowerCase() === "cl" ? 10 : 1);
      return measure(ml, `${ml} ml`);
    },
  },
  {
    field: "traits.widthMm",
    families: wide,
    pattern: whole(`(?:(\\d)/(\\d{1,2})|${number})\\s*-?\\s*${unit}`),
    read: width,
  },
  {
    // A liner's "0.3" is its width: common practice, no source.
    field: "traits.widthMm",
    families: ["liner"],
    pattern: whole("0[.,]\\d+"),
    read: (match) => measure(toNumber(match[0]), `${toNumber(match[0])} mm`),
  },
  {
    field: "traits.grade",
    families: ["graphite"],
    pattern: whole("(?:10|[2-9])[hb]|hb|[fhb]"),
    read: (match) => {
      const grade = match[0].toUpperCase();
      return grades.includes(grade) ? [grade, `grade ${grade}`] : null;
    },
  },
  {
    field: "traits.pigments",
    families: ["paint"],
    // Colour Index usage and hue letters, a number, and a number after a colon in some.
    pattern: whole("[PN](?:Bk|Br|B|G|M|O|R|V|W|Y)\\d{1,3}(?::\\d)?"),
    read: (match) => [match[0], `pigment ${match[0]}`],
  },
  {
    field: "lightfast",
    families: ["marker", "liner", "colour-pencil", "paint", "ink", "pastel"],
    pattern: whole("(?:lightfast(?:ness)?|astm)\\s+(iii|ii|iv|i|v)|(?:blue wool|bw)\\s*([1-8])"),
    read: (match) => {
      const rating = match[1]?.toUpperCase() ?? `bw${match[2]}`;
      return (lightfastness as readonly string[]).includes(rating)
        ? [rating, `lightfastness ${rating}`]
        : null;
    },
  },
];

function readRule(text: string, rule: Rule, taken: readonly Span[]): readonly Found[] {
  return matches(text, rule.pattern, taken).flatMap((match) => {
    const reading = rule.read(match);
    return reading ? [found(match, rule.field, ...reading)] : [];
  });
}

/** Every measure in the line that its family can have; of two for one field the first, pigments all. */
export function readMeasures(text: string, family: Family, taken: readonly Span[]): readonly Found[] {
  const all: Found[] = [];
  for (const rule of rules.filter(({ families }) => families.includes(family))) {
    const hits = readRule(text, rule, [...taken, ...all]);
    if (isList(rule.field)) all.push(...hits);
    else if (!all.some((piece) => piece.field === rule.field)) all.push(...hits.slice(0, 1));
  }
  return all;
}

/** "A4" or "90 gsm" or "20 sheets" say paper; "24 x 32 cm" or "90 g" could be anything. */
const saysPaper = ({ field, text }: Found): boolean =>
  field === "traits.sheets" || /^din|^[abc]\d|gsm|m2|m²|qm/i.test(text);

/** A family told by a measure alone: "A4, 90 gsm" is paper, "4B" a pencil. */
export function familyByMeasure(text: string): Family | null {
  if (readMeasures(text, "paper", []).some(saysPaper)) return "paper";
  const grade = readMeasures(text, "graphite", [])[0];
  return grade && /^(hb|\d+[hb])$/i.test(grade.text) ? "graphite" : null;
}
