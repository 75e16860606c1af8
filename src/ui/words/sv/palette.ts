import type { paletteWords as en } from "../en/palette.ts";
import { listed } from "./say.ts";

/** The words of the palette as a picture, in Swedish. */
export const paletteWords: typeof en = {
  title: "Paletten",

  finding: {
    none: "Ingen av färgerna har någon bredvid sig än.",
    met: "Varje färg är exakt träffad.",
    lookTheSame: (most) =>
      `Ingen färg ligger mer än ${most} ifrån: till och med sida vid sida ser de likadana ut.`,
    only: (colour, line, apart, how) =>
      how.length === 0
        ? `Rad ${line}, ${colour}, är så gott som träffad.`
        : `Rad ${line}, ${colour}, ligger ${apart} ifrån: ${how.join(", ")}.`,
    drifts: (mean, colour, line, how) =>
      `${mean} ifrån i genomsnitt; längst ifrån ligger rad ${line}, ${colour}${how.length === 0 ? "" : `: ${how.join(", ")}`}.`,
    alone: (lines) => `Rad ${listed(lines.map(String))} har ingen färg bredvid sig.`,
  },

  disc: "Kulör och styrka",
  ladder: "Ljushet",
  discText: (finding) => `Kulör som riktning, styrka som avstånd från mitten. ${finding}`,
  ladderText: "Varje rad på sin ljushet, från svart vid 0 till vitt vid 100.",
  hues: {
    red: "rött",
    orange: "orange",
    yellow: "gult",
    green: "grönt",
    teal: "turkos",
    blue: "blått",
    violet: "violett",
    pink: "rosa",
  },
  white: "vitt",
  black: "svart",
  kit: "i kitet",
  mine: "från mina hyllor",
  alone: "inget bredvid",
  caption:
    "Gråa färger ligger i mitten, starkare längre ut. Ju längre strecket mellan två märken är, desto längre ifrån varandra ligger de; skalan är densamma i båda bilderna.",

  table: {
    open: "samma sak som tabell",
    caption: "Kitets färger och vad som står bredvid dem",
    line: "Rad",
    kit: "I kitet",
    mine: "Från mina hyllor",
    apart: "Ifrån",
    how: "Hur den missar",
    lab: (l, a, b) => `ljushet ${l}; a ${a}; b ${b}`,
    same: "inte alls",
    slight: "för lite för att säga",
    gap: "inget som ligger nära",
    leftOut: "utelämnad med flit",
    unknown: "färgen är inte antecknad",
    about:
      "Ljusheten går från 0, svart, till 100, vitt; a går från grönt till rött, b från blått till gult (CIELAB i dagsljus, D65). Ifrån är skillnaden enligt CIEDE2000; under 2 syns den bara sida vid sida. Den väger de tre som ögat ser dem, så ett långt streck mellan starka färger kan räknas mindre än ett kort mellan gråa.",
  },
};
