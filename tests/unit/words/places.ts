import { actWords as actsEn } from "../../../src/ui/words/en/acts.ts";
import { bulkWords as bulkEn } from "../../../src/ui/words/en/bulk.ts";
import { chartWords as chartEn } from "../../../src/ui/words/en/chart.ts";
import { codeWords as codesEn } from "../../../src/ui/words/en/codes.ts";
import { deskWords as deskEn } from "../../../src/ui/words/en/desk.ts";
import { findWords as findEn } from "../../../src/ui/words/en/find.ts";
import { frameWords as frameEn } from "../../../src/ui/words/en/frame.ts";
import { importWords as importEn } from "../../../src/ui/words/en/import.ts";
import { keepSafeWords as keepSafeEn } from "../../../src/ui/words/en/keep-safe.ts";
import { kinWords as kinEn } from "../../../src/ui/words/en/kin.ts";
import { kitLogWords as kitLogEn } from "../../../src/ui/words/en/kit-log.ts";
import { kitsWords as kitsEn } from "../../../src/ui/words/en/kits.ts";
import { marketsWords as marketsEn } from "../../../src/ui/words/en/markets.ts";
import { meanings as meaningsEn, meaningsPage as meaningsPageEn } from "../../../src/ui/words/en/meanings.ts";
import { paletteWords as paletteEn } from "../../../src/ui/words/en/palette.ts";
import { photoWords as photosEn } from "../../../src/ui/words/en/photos.ts";
import { printWords as printEn } from "../../../src/ui/words/en/print.ts";
import { remakeWords as remakesEn } from "../../../src/ui/words/en/remakes.ts";
import { saveWords as saveEn } from "../../../src/ui/words/en/save.ts";
import { setWords as setEn } from "../../../src/ui/words/en/set.ts";
import { stashWords as stashEn } from "../../../src/ui/words/en/stash.ts";
import { supplyWords as supplyEn } from "../../../src/ui/words/en/supply.ts";
import { terms as termsEn } from "../../../src/ui/words/en/terms.ts";
import { tidyWords as tidyEn } from "../../../src/ui/words/en/tidy.ts";
import { worthWords as worthEn } from "../../../src/ui/words/en/worth.ts";
import { writeUpWords as writeUpEn } from "../../../src/ui/words/en/write-up.ts";
import { actWords } from "../../../src/ui/words/sv/acts.ts";
import { bulkWords } from "../../../src/ui/words/sv/bulk.ts";
import { chartWords } from "../../../src/ui/words/sv/chart.ts";
import { codeWords } from "../../../src/ui/words/sv/codes.ts";
import { deskWords } from "../../../src/ui/words/sv/desk.ts";
import { findWords } from "../../../src/ui/words/sv/find.ts";
import { frameWords } from "../../../src/ui/words/sv/frame.ts";
import { importWords } from "../../../src/ui/words/sv/import.ts";
import { keepSafeWords } from "../../../src/ui/words/sv/keep-safe.ts";
import { kinWords } from "../../../src/ui/words/sv/kin.ts";
import { kitLogWords } from "../../../src/ui/words/sv/kit-log.ts";
import { kitsWords } from "../../../src/ui/words/sv/kits.ts";
import { marketsWords } from "../../../src/ui/words/sv/markets.ts";
import { meanings, meaningsPage } from "../../../src/ui/words/sv/meanings.ts";
import { paletteWords } from "../../../src/ui/words/sv/palette.ts";
import { photoWords } from "../../../src/ui/words/sv/photos.ts";
import { printWords } from "../../../src/ui/words/sv/print.ts";
import { remakeWords } from "../../../src/ui/words/sv/remakes.ts";
import { saveWords } from "../../../src/ui/words/sv/save.ts";
import { setWords } from "../../../src/ui/words/sv/set.ts";
import { stashWords } from "../../../src/ui/words/sv/stash.ts";
import { supplyWords } from "../../../src/ui/words/sv/supply.ts";
import { terms } from "../../../src/ui/words/sv/terms.ts";
import { tidyWords } from "../../../src/ui/words/sv/tidy.ts";
import { worthWords } from "../../../src/ui/words/sv/worth.ts";
import { writeUpWords } from "../../../src/ui/words/sv/write-up.ts";

/** The words of every place, in English and in Swedish. */
export const places = [
  ["acts", actsEn, actWords],
  ["bulk", bulkEn, bulkWords],
  ["chart", chartEn, chartWords],
  ["codes", codesEn, codeWords],
  ["desk", deskEn, deskWords],
  ["find", findEn, findWords],
  ["frame", frameEn, frameWords],
  ["import", importEn, importWords],
  ["keep-safe", keepSafeEn, keepSafeWords],
  ["kin", kinEn, kinWords],
  ["kit-log", kitLogEn, kitLogWords],
  ["kits", kitsEn, kitsWords],
  ["markets", marketsEn, marketsWords],
  ["meanings", { meanings: meaningsEn, page: meaningsPageEn }, { meanings, page: meaningsPage }],
  ["palette", paletteEn, paletteWords],
  ["photos", photosEn, photoWords],
  ["print", printEn, printWords],
  ["remakes", remakesEn, remakeWords],
  ["save", saveEn, saveWords],
  ["set", setEn, setWords],
  ["stash", stashEn, stashWords],
  ["supply", supplyEn, supplyWords],
  ["terms", termsEn, terms],
  ["tidy", tidyEn, tidyWords],
  ["worth", worthEn, worthWords],
  ["write-up", writeUpEn, writeUpWords],
] as const;
