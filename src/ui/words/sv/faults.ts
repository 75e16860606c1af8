/**
 * Faults and notices in Swedish. The engine says them in English, which is the file format's own language; as
 * with gettext, the English sentence is the key.
 */

const exact: ReadonlyMap<string, string> = new Map([
  // Files.
  ["larger than 50 MB", "större än 50 MB"],
  ["split it, or leave out what is not needed", "dela upp den, eller utelämna det som inte behövs"],
  ["nested too deep", "för djupt nästlad"],
  ["choose a workbook file", "välj en arbetsboksfil"],
  ["choose a workbook file, or mend it at that spot", "välj en arbetsboksfil, eller laga den på det stället"],
  ["it cannot be parsed", "den går inte att tolka"],
  ["written by a newer version", "skriven av en nyare version"],
  ["below 1", "under 1"],
  ["write 1", "skriv 1"],
  // Fields.
  ["missing", "saknas"],
  ["put it right", "rätta till det"],
  ["mend it, and try again", "rätta till det och försök igen"],
  ["Invalid input", "det passar inte där"],
  ["a list of the wrong length", "listan har fel längd"],
  ["write two numbers", "skriv två tal"],
  ["the id is empty", "id:t är tomt"],
  ["give it at least one character", "ge det minst ett tecken"],
  ["the id has a slash in it", "id:t har ett snedstreck i sig"],
  ["leave the slash out", "ta bort snedstrecket"],
  ["give it an id of its own", "ge det ett eget id"],
  ["there is no such date", "det datumet finns inte"],
  ["write an existing day as YYYY-MM-DD", "skriv en dag som finns, som ÅÅÅÅ-MM-DD"],
  ["there is no such month", "den månaden finns inte"],
  ["write it as YYYY-MM", "skriv den som ÅÅÅÅ-MM"],
  ["not a plain decimal without sign or exponent", "inget vanligt decimaltal utan tecken och exponent"],
  ['write digits as text, such as "12.50"', 'skriv siffror som text, till exempel "12.50"'],
  ["more than 1", "mer än 1"],
  ["write a fraction from 0 to 1", "skriv en andel från 0 till 1"],
  ["below nought", "under noll"],
  ["write a whole number from 0 up", "skriv ett heltal från 0 och uppåt"],
  ["write a weight from 0 up", "skriv en vikt från 0 och uppåt"],
  ["less than one", "mindre än ett"],
  ["write a whole number from 1 up", "skriv ett heltal från 1 och uppåt"],
  ["not above nought", "inte över noll"],
  ["write a number above 0", "skriv ett tal över 0"],
  ["below 0", "under 0"],
  ["above 5", "över 5"],
  ["write 0 (never) to 5 (every day)", "skriv 0 (aldrig) till 5 (varje dag)"],
  ["not a colour", "ingen färg"],
  ['write six hex digits, such as "#6b7d3a"', 'skriv sex hexsiffror, till exempel "#6b7d3a"'],
  ['write hex such as "#6b7d3a", or "lab(50 -12 30)"', 'skriv hex som "#6b7d3a", eller "lab(50 -12 30)"'],
  ["no line is named", "ingen rad är angiven"],
  ["write it as kit/line", "skriv den som kit/rad"],
  ["the shares do not come to 1", "andelarna blir inte 1 tillsammans"],
  // Money.
  ["not a currency code", "ingen valutakod"],
  ['write one of ISO 4217, such as "EUR"', 'skriv en ur ISO 4217, till exempel "EUR"'],
  ["a rate of nought", "en kurs på noll"],
  ["write what 1 of the base is worth", "skriv vad 1 av basvalutan är värd"],
  ["give the price that was seen, an amount and a currency", "ange priset som sågs, belopp och valuta"],
  ["write it as YYYY-MM-DD", "skriv det som ÅÅÅÅ-MM-DD"],
  ['the first column is not "Date"', 'den första kolumnen heter inte "Date"'],
  ["choose a reference-rate file with a header row", "välj en fil med referenskurser som har en rubrikrad"],
  ["keep one of them", "behåll en av dem"],
  ["no column is a currency", "ingen kolumn är en valuta"],
  ["head each column with a code such as USD", "skriv en kod som USD överst i varje kolumn"],
  ["choose a market of this workbook, or add it", "välj en marknad i arbetsboken, eller lägg till den"],
  ["the day whose prices and rates count is missing", "dagen vars priser och kurser gäller saknas"],
  [
    "say as of which day the kit is valued, as YYYY-MM-DD",
    "säg per vilken dag kitet värderas, som ÅÅÅÅ-MM-DD",
  ],
  // Changes.
  ["it is no longer there", "det finns inte kvar"],
  ["look at what is there now, and try again", "se vad som finns nu, och försök igen"],
  ["take out no more than there are", "ta inte ut mer än det finns"],
  ["this is a fault of the app; please tell its makers", "det är ett fel i appen; säg till dem som gör den"],
  ["a field was to be set, and none was named", "ett fält skulle ändras, men inget var angivet"],
  ["the field that names a part cannot be changed", "fältet som namnger en del går inte att ändra"],
  ["a part was to be changed, and none was named", "en del skulle ändras, men ingen var angiven"],
  ["a part was to be put in under another name", "en del skulle läggas in under ett annat namn"],
  ["a record was to be changed through the whole book", "en post skulle ändras genom hela boken"],
  ["a record was to be put in under another name", "en post skulle läggas in under ett annat namn"],
  ["the field that names a record cannot be changed", "fältet som namnger en post går inte att ändra"],
  // Places.
  ["file", "filen"],
]);

/** What a field should hold, or holds. */
const kinds: ReadonlyMap<string, string> = new Map([
  ["text in quotes", "text inom citattecken"],
  ["a number, without quotes", "ett tal, utan citattecken"],
  ["a whole number, without quotes", "ett heltal, utan citattecken"],
  ["true or false", "true eller false"],
  ["a list in [ ]", "en lista inom [ ]"],
  ["a record in { }", "en post inom { }"],
  ["null", "null"],
  ["a list", "en lista"],
  ["a record", "en post"],
  ["text", "text"],
]);

/** What an id may belong to: that there is none, and that one should be named. */
const owners: ReadonlyMap<string, Readonly<{ none: string; name: string }>> = new Map([
  ["market", { none: "ingen marknad", name: "en marknad i arbetsboken" }],
  ["shop", { none: "ingen butik", name: "en butik i arbetsboken" }],
  ["kit", { none: "inget kit", name: "ett kit i arbetsboken" }],
  ["photo", { none: "inget foto", name: "ett foto i arbetsboken" }],
  ["stash item", { none: "ingen sak i förrådet", name: "en sak i förrådet" }],
  ["line (kit/line)", { none: "ingen rad (kit/rad)", name: "en rad i arbetsboken, som kit/rad" }],
  ["line of this kit", { none: "ingen rad i kitet", name: "en rad i kitet" }],
]);

const and = (codes: string): string => codes.replaceAll(" and ", " och ");

type Put = (...caught: readonly string[]) => string | null;

/** A kind in a sentence; null where the kind is not known, so that no sentence is half English. */
const withKind =
  (say: (kind: string) => string): Put =>
  (kind = "") => {
    const known = kinds.get(kind);
    return known === undefined ? null : say(known);
  };

/** Why a file is no JSON. Browsers say it in English: of theirs only the spot is kept, where they name it. */
function noJson(why: string): string {
  const known = exact.get(why);
  const spot = /line (\d+),? column (\d+)/.exec(why);
  if (known !== undefined) return `inte JSON (${known})`;
  return spot ? `inte JSON (rad ${spot[1]}, tecken ${spot[2]})` : "inte JSON";
}

const patterns: readonly (readonly [RegExp, Put])[] = [
  [/^not JSON \((.*)\)$/s, (why = "") => noJson(why)],
  [
    /^write (\d+), or read it with a newer Understudy$/,
    (version) => `skriv ${version}, eller läs den med ett nyare Understudy`,
  ],
  [/^give (.+)$/s, withKind((kind) => `ange ${kind}`)],
  [/^write ((?:a|text|true) .+)$/s, withKind((kind) => `skriv ${kind}`)],
  [/^write one of (.+)$/s, (words) => `skriv något av ${words}`],
  [/^write (".+")$/s, (word) => `skriv ${word}`],
  [/^the number (.+) where it does not fit$/s, (number) => `talet ${number} passar inte där`],
  [/^(.+) where it does not fit$/s, withKind((kind) => `${kind} passar inte där`)],
  [/^([\d.e+-]+) is not whole$/, (number) => `${number} är inget heltal`],
  [/^(.+) is not known here$/s, (word) => `${word} är inte känt här`],
  [/^(".*") stands twice in this list$/s, (id) => `${id} står två gånger i listan`],
  [
    /^there is no (market|shop|kit|photo|stash item|line \(kit\/line\)|line of this kit) (".*")$/s,
    (owner = "", id = "") => `det finns ${owners.get(owner)?.none} ${id}`,
  ],
  [
    /^name a (.+) of this workbook$/s,
    (owner = "") => (owners.has(owner) ? `ange ${owners.get(owner)?.name}` : null),
  ],
  [/^(".*") is not a colour$/s, (text) => `${text} är ingen färg`],
  [/^(\S+) is still to come$/, (day) => `${day} har inte varit än`],
  [
    /^(\w+) is the base, so it counts as 1, not (\S+)$/,
    (code, quote) => `${code} är basvaluta och räknas som 1, inte ${quote}`,
  ],
  [
    /^(\S+) is far from (\S+) of (\S+); check it$/,
    (quote, last, day) => `${quote} är långt från ${last} den ${day}; kontrollera det`,
  ],
  [/^(".*") is no date$/s, (text) => `${text} är inget datum`],
  [/^(".*") is no rate$/s, (text) => `${text} är ingen kurs`],
  [/^write what 1 (\w+) is worth, or N\/A$/, (code) => `skriv vad 1 ${code} är värd, eller N/A`],
  [/^(\w+) has two columns$/, (code) => `${code} har två kolumner`],
  [
    /^there is no exchange rate for (.+) on or before (\S+)$/,
    (codes = "", day = "") => `det finns ingen växelkurs för ${and(codes)} den ${day} eller tidigare`,
  ],
  [
    /^no one rate table dated on or before (\S+) has both (\w+) and (\w+)$/,
    (day, from, to) => `ingen kurstabell från ${day} eller tidigare har både ${from} och ${to}`,
  ],
  [
    /^add a rate table dated on or before (\S+) with (\w+) and (\w+)$/,
    (day, to, from) => `lägg till en kurstabell från ${day} eller tidigare med ${to} och ${from}`,
  ],
  [/^there are only (\d+) left$/, (count) => `det finns bara ${count} kvar`],
  [/^line (\d+)(.*)$/, (number, column) => `rad ${number}${column}`],
];

/** A sentence of the engine's, or the place of a fault, in Swedish; null where it is not known here. */
export function inSwedish(english: string): string | null {
  const known = exact.get(english);
  if (known !== undefined) return known;
  for (const [pattern, put] of patterns) {
    const caught = pattern.exec(english);
    const swedish = caught && put(...caught.slice(1));
    if (swedish) return swedish;
  }
  return null;
}
