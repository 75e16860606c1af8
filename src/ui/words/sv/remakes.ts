import type { remakeWords as en } from "../en/remakes.ts";
import { capital, listed, spelled } from "./say.ts";

const remakes = (n: number): string => `${spelled(n, "inga", "ett")} omtag`;
const lessOf = (n: number): string => (n === 0 ? "inget mindre" : n > 0 ? `${n} mindre` : `${-n} mer`);
const numbered = (numbers: readonly number[]): string =>
  numbers.length === 1 ? `rad ${numbers[0]}` : `rad ${listed(numbers.map(String))}`;

/** The words of remakes, in Swedish. A thing keeps its name as it is written, so that it needs no gender. */
export const remakeWords: typeof en = {
  tabs: { "stand-ins": "Ersättare", bench: "Bänken", verdict: "Omdöme", "write-up": "Texten" },
  begun: (date) => `Börjat ${date}`,
  finished: (date) => `Klart ${date}`,
  kitOf: (month) => `Kit för ${month}`,
  prompt: (text) => (/[.!?…]$/.test(text) ? `Uppgift: ${text}` : `Uppgift: ${text}.`),
  gone: {
    title: "Det här omtaget finns inte här",
    text: "Det kan ha tagits bort, eller så är adressen felskriven.",
    act: "Se alla omtag",
  },
  refused: (problem, remedy) => `Inte gjort. ${capital(problem)} ${capital(remedy)}`,
  add: "Lägg till",
  remove: "ta bort",
  removeNamed: (name) => `Ta bort ${name}`,

  acts: {
    leaveOut: (name) => `Lämna ${name} utan ersättare`,
    note: (name) => `Anteckna något om ${name}`,
    takePalette: "Ta ersättarna som håller ihop paletten",
    clearAll: "Välj alla ersättare på nytt",
    gone: {
      dried: (name) => `Markera ${name} som uttorkad`,
      empty: (name) => `Markera ${name} som slut`,
    },
    twins: (on) => (on ? "Låt tvillingar vara med" : "Lämna tvillingar på hyllan"),
    prompt: "Ändra uppgiften",
    step: "Ändra ett steg",
    basics: "Ändra grundsakerna",
    shown: "Ändra vad som bara visas",
    bends: "Ändra de tänjda reglerna",
    notes: "Ändra anteckningarna",
    kitVerdict: "Ge ett omdöme om kitet",
    finished: "Ändra dagen det blev klart",
    questions: "Ändra frågorna",
    corrections: "Ändra rättelserna",
    episode: "Ändra avsnittet",
    publish: "Spara den publicerade versionen",
  },

  list: {
    lead: (open, done) =>
      open === 0
        ? `${capital(remakes(done))} ${done === 1 ? "klart" : "klara"}, inget på gång.`
        : `${capital(remakes(open))} på gång${
            done > 0 ? `, ${spelled(done, "inga", "ett")} ${done === 1 ? "klart" : "klara"}` : ""
          }.`,
    caption: "Omtag",
    kit: "Kit",
    maker: "Skickat av",
    begun: "Börjat",
    stands: "Hur långt det har kommit",
    finished: (date) => `klart ${date}`,
    standIns: (filled, all) => `${filled} av ${all} har en ersättare`,
    verdicts: (said, all) => `${said} av ${all} har fått omdöme`,
    published: (date) => `publicerat ${date}`,
    noLines: "innehållet är inte inskrivet än",
    emptyTitle: "Här kommer dina omtag att stå",
    emptyText:
      "Ett omtag tar om ett kit med det som står på dina egna hyllor: ersättare, bänken, ett omdöme, texten.",
    noKitsTitle: "Ett omtag börjar med ett kit",
    noKitsText: "Skriv in vad ett kit innehöll, så kan du ta om det här.",
    toKits: "Skriv in ett kit",
    startTitle: "Ta om ett kit",
    whichKit: "Kit",
    whichKitHint: "vilket som helst som du har skrivit in",
    started: "Börjat den",
    startedHint: "Det som köptes efter den dagen är inte med.",
    start: "Börja omtaget",
    noKit: "Inget kit är valt. Välj ett i listan.",
    noDate: "Dagen saknas. Skriv den som 30 april 2026.",
    begunSaid: (kit) => `Ett omtag av ${kit} har börjat.`,
    removed: (kit) => `Omtaget av ${kit} är borttaget.`,
  },

  standIns: {
    lead: (filled, all) =>
      filled === all
        ? all === 1
          ? "Den enda saken har en ersättare."
          : `Alla ${spelled(all)} har en ersättare.`
        : `${capital(spelled(filled, "ingen"))} av ${spelled(all)} har en ersättare.`,
    gaps: (names) =>
      names.length > 2
        ? `Inget som ligger nära för ${spelled(names.length)} av dem.`
        : `Inget som ligger nära för ${listed(names)}.`,
    leftOpen: (names) =>
      names.length > 2
        ? `${capital(spelled(names.length))} är utelämnade med flit.`
        : `Med flit utelämnat: ${listed(names)}.`,
    emptyTitle: "Här kommer ersättarna att stå",
    emptyText: "Skriv in vad kitet innehöll, så får varje sak det närmaste från dina hyllor.",
    emptyAct: "Skriv in innehållet",
    way: "Hur de väljs",
    nearest: "Närmast, sak för sak",
    palette: "Håll ihop paletten",
    figures: (near, apart, steps) =>
      [
        `${near} av 100`,
        apart === null ? null : `färgerna ${apart} ifrån`,
        steps === null ? null : `stegen ${steps} fel`,
      ]
        .filter((part) => part !== null)
        .join(", "),
    figuresWhy: "varför de siffrorna?",
    figuresText:
      "”Av 100” är hur nära ersättarna ligger i genomsnitt, där en lucka räknas som 0. ”Ifrån” är hur långt varje färg ligger från sin egen i kitet, i genomsnitt. ”Stegen fel” är hur mycket stegen mellan kitets färger har ändrats: tre olika röda ska förbli tre olika. Båda är skillnader enligt CIEDE2000; under 2 syns det bara sida vid sida. Vid det näst bästa räknas ”mindre här” på dess egen rad, och ”mindre på alla” på alla rader sammanlagt, för ett byte kan flytta andra.",
    sameEitherWay: "Båda sätten ger samma ersättare.",
    takePalette: "Ta de här ersättarna",
    takePaletteText: (lines) => `De visas, men är inte valda än. Annat än det närmaste: ${lines}.`,
    tookPalette: "Palettens ersättare är nu dina val.",
    inKit: "I kitet",
    mine: "Från mina hyllor",
    nextKey: "N",
    nextBest: "näst bäst",
    howNear: "Hur nära",
    line: numbered,
    pieces: (n) => `${n} stycken`,
    fewer: (inKit, here) => `${inKit} i kitet, ${here} här`,
    nothingClose: "Inget som ligger nära",
    gapWord: "lucka",
    ownPick: "mitt eget val",
    leftOut: "Utelämnat",
    leftOutFact: "med flit",
    gapNearest: (name, figure) => `Det närmaste, ${name}, kommer till ${figure} av 100.`,
    gapOut: (name, reason) => `${name} ligger nära, men är inte med: ${reason}.`,
    gapNone: "Inget av det slaget på dina hyllor.",
    leaveOut: "Utelämna det",
    pickAnyway: "Välj något ändå",
    pickOther: "Välj något annat",
    chooseFrom: "Ur hela förrådet",
    chooseAgain: "Låt det väljas på nytt",
    chooseAllAgain: "Låt allt väljas på nytt",
    next: (name, figure, cost) => `Nästa: ${name}, ${figure}; ${cost}.`,
    costs: (less) => (less === 0 ? "lika nära" : lessOf(less)),
    costsApart: (here, all, lines) =>
      `${lessOf(here)} här, ${lessOf(all)} på ${lines === 2 ? "båda" : `alla ${spelled(lines)}`}`,
    nextPlain: (name, figure) => `Nästa: ${name}, ${figure}.`,
    swap: "byt",
    swapFor: (name) => `, ${name}`,
    yours: "Ditt val.",
    instead: (name) => `I stället för ${name}.`,
    lastResort: "Sista utväg: inget annat duger, så det som kitet självt gav får vara med som sig självt.",
    mixedWith: (name, work) => `med ${name}${work ? `: ${work}` : ""}`,
    judgedByLarger: "Hur nära det ligger bedöms efter den större delen.",
    received: "Du har fått det här kitet förut, så dess egna saker och deras tvillingar stannar på hyllan.",
    receivedTwins:
      "Du har fått det här kitet förut, så dess egna saker stannar på hyllan; deras tvillingar får vara med.",
    twins: "Låt tvillingar vara med",
    twinsMore: "samma produkt under ett annat namn",
    runnersUp: "Andra som kan ersätta det",
    noRunners: "Inget annat kan ersätta det.",
    outTitle: "Inte med",
    use: "ta den här",
    takeNamed: (name) => `, ${name}`,
    useBent: "ta den, och säg det",
    notUsed: "används inte",
    more: (n) => `${n} till`,
    out: {
      "received-before": "kom med det här kitet",
      "acquired-after": "kom efter att kitet blev känt eller omtaget började",
      empty: "slut",
      dried: "uttorkad",
    },
    outLine: (reason) => `inte med: ${reason}`,
    inUse: (number, name) => `ersätter rad ${number}, ${name}`,
    bends: {
      "acquired-after": (name) => `${name} kom efter starten.`,
      "received-before": (name) => `${name} kom med just det här kitet.`,
    },
    compared: {
      caption: (name) => `Vad som jämfördes med ${name}`,
      nearest: (name) => `Det närmaste, ${name}:`,
      what: "Vad som jämfördes",
      kit: "Kitets",
      mine: "Min",
      alike: "Likt",
      counts: "Vikt",
      unknown: "inte känt",
      yes: "ja",
      no: "nej",
      same: "Det är precis samma produkt, så det fanns inget att jämföra.",
      twin: "Det är samma produkt under ett annat namn, så det fanns inget att jämföra.",
      nothing: "Inget är känt om saken i kitet som går att jämföra.",
      traits: (figure) => `${figure} för egenskaperna`,
      family: (factor, mine, kit) => `sedan × ${factor}: ${mine} i stället för ${kit}`,
      far: (factor) => `sedan × ${factor}: färgen ligger långt ifrån`,
      comes: (figure) => `vilket blir ${figure} av 100`,
      allKnown: "Allt är känt på båda sidor.",
      partKnown: (share) =>
        `${share} av 100 av det som räknas är känt på båda sidor; resten räknas till hälften.`,
      noneKnown: "Inget av det är känt om min, så det räknas till hälften.",
    },
    note: "En anteckning om valet",
    noteHint: "kommer med i texten",
    moved: (lines) => `${capital(lines)} ändrades också.`,
    picked: (number, name) => `Rad ${number} har nu ${name}.`,
    pickedNone: (number) => `Rad ${number} har nu inget som ligger nära.`,
    leftOutSaid: (number) => `Rad ${number} är utelämnad.`,
    allCleared: "Varje rad har sitt närmaste igen.",
    twinsOn: "Tvillingar får vara med.",
    twinsOff: "Tvillingar stannar på hyllan.",

    fetch: "Hämta dem",
    fetchedSome: (done, all) =>
      done === all
        ? all === 1
          ? "hämtad"
          : `alla ${spelled(all)} hämtade`
        : `${spelled(done, "ingen")} av ${spelled(all)} ${done < 2 ? "hämtad" : "hämtade"}`,
    noPlace: "Ingen plats antecknad",
    forLine: numbered,
    forBasics: "grundsaker",
    forShown: "bara att visa",
    gone: { dried: "markera som uttorkad", empty: "markera som slut" },
    goneNamed: (name) => `, ${name}`,
    goneSaid: {
      dried: (name) => `${name} är markerad som uttorkad.`,
      empty: (name) => `${name} är markerad som slut.`,
    },
    tickFetched: (name) => `Bocka av ${name} som hämtad`,
    untickFetched: (name) => `Ta bort bocken för ${name}`,
  },

  bench: {
    lead: (steps) =>
      steps === 0
        ? "Inget antecknat än."
        : `${capital(spelled(steps, "inga", "ett"))} steg ${steps === 1 ? "antecknat" : "antecknade"}.`,
    leadMore: (basics, bends) =>
      [
        basics > 0
          ? `${capital(spelled(basics))} ${basics === 1 ? "grundsak tillagd" : "grundsaker tillagda"}.`
          : "",
        bends > 0
          ? `${capital(spelled(bends))} ${bends === 1 ? "regel tänjd" : "regler tänjda"}, och det är sagt.`
          : "",
      ]
        .join(" ")
        .trim(),
    prompts: "Uppgiften",
    promptText: "Uppgift",
    promptFrom: (from) => (from === "kit" ? "från kitet" : `från ${from}`),
    addPrompt: "En uppgift till",
    addPromptHint: "en tittares, eller din egen",
    log: "Steg",
    logEmpty: "Vad du gör, medan du gör det. Med tider ur inspelningen blir stegen dess kapitel.",
    at: "Tid",
    atHint: "som i inspelningen, 12:30",
    what: "Vad som hände",
    addStep: "Lägg till steget",
    basics: "Tillagda grundsaker",
    basicsText: "Något att rita med, att rita på eller att sudda med, där kitet saknar det.",
    basicsFrom: "Ur förrådet",
    role: "För att",
    roles: { sketch: "rita med", carry: "rita på", erase: "sudda med" },
    addBasic: "Lägg till den",
    shown: "Bara visat",
    shownText: "Det som visas men inte används i verket, en övergång till exempel.",
    shownWhy: "Varför",
    addShown: "Lägg till den",
    bends: "Tänjda regler",
    bendsText: "En regel får tänjas om du säger det: det står med i texten.",
    rule: "Regel",
    rules: {
      "1": "Ersättarna kommer från mina egna hyllor",
      "2": "Det ett kit en gång gav mig är inte med",
      "3": "Bara grundsakerna får läggas till",
    },
    bendWhy: "Varför den tänjdes",
    addBend: "Säg det",
    notes: "Anteckningar",
    notesLabel: "Något att komma ihåg",
    notesHint: "för dig själv; inte med i texten",
    choose: "Inget är valt. Välj en sak ur förrådet.",
    write: "Det är tomt. Skriv några ord.",
    badTime: "Det här går inte att läsa som en tid. Skriv 12:30, eller lämna det tomt.",
    removed: (what) => `Borttaget: ${what}.`,
    end: "Det här omtaget",
    removeRemake: "Ta bort det här omtaget",
  },

  verdict: {
    lead: (said, all) =>
      said === 0
        ? "Inget omdöme än."
        : said === all
          ? all === 1
            ? "Den enda saken har fått sitt omdöme."
            : `Alla ${spelled(all)} har fått sitt omdöme.`
          : `${capital(spelled(said))} av ${spelled(all)} har fått sitt omdöme.`,
    leadMore: (often, buy) =>
      `${capital(spelled(often, "ingen"))} skulle du använda ofta eller oftare, ${spelled(buy, "ingen")} skulle du köpa.`,
    items: "Sak för sak",
    use: "Skulle jag använda det?",
    notSaid: "inte sagt",
    uses: ["aldrig", "nästan aldrig", "då och då", "ofta", "de flesta veckor", "varje dag"],
    buy: "Skulle jag köpa det?",
    yes: "ja",
    no: "nej",
    replaces: "Det skulle ersätta",
    text: "Med några ord",
    stoodIn: (name) => `ersattes av ${name}`,
    nothingStoodIn: "inget ersatte det",
    kit: "Kitet som helhet",
    kitLabel: "Mitt omdöme",
    finished: "Klart den",
    questions: "Frågor till publiken",
    question: "En fråga",
    addQuestion: "Lägg till frågan",
    corrections: "Rättelser",
    correctionsText: "Vad som sades fel i inspelningen, och hur det ska vara.",
    at: "Tid",
    said: "Jag sa",
    meant: "Jag menade",
    addCorrection: "Lägg till rättelsen",
    line: (n) => `Rad ${n}`,
  },

  writeUp: {
    ready: "Klar att publicera.",
    notYet: "Nästan klar.",
    tooTight: "Klar, men förkortad.",
    size: (bytes, limit) => `${bytes} av ${limit} byte.`,
    leftOut: (titles) => `Utelämnat för längdens skull: ${titles.join("; ")}.`,
    episode: "Avsnittet",
    title: "Titel",
    disclosure: "Hur jag fick materialet",
    disclosures: {
      bought: "köpt",
      gifted: "fått",
      lent: "lånat",
      sponsored: "sponsrat",
      affiliate: "med reklamlänkar",
      own: "mitt eget",
    },
    disclosuresMore: {
      bought: "av mig själv",
      gifted: "av tillverkare eller säljare",
      lent: "av tillverkare eller säljare",
      sponsored: "mot betalning",
      affiliate: "som ger mig provision",
      own: "fanns redan hemma",
    },
    disclosureHint: "Säg det i inspelningen också. Lokala regler för reklam går först.",
    tags: "Taggar",
    tagsHint: "med komma emellan, tre till fem",
    links: "Länkar",
    linkText: "Vart den leder",
    linkUrl: "Adress",
    linkUrlHint: "börjar med https://",
    badUrl: "Det här är ingen säker adress. Börja den med https://.",
    addLink: "Lägg till länken",
    reminders: "Innan du publicerar",
    text: "Texten",
    form: "Som",
    forms: { text: "ren text", markdown: "Markdown", csv: "tabeller (CSV)" },
    limit: "Gräns",
    limitUnit: "byte",
    badLimit: "Skriv gränsen som ett helt antal byte, till exempel 5000.",
    count: (bytes, limit) => (limit === null ? `${bytes} byte` : `${bytes} av ${limit} byte`),
    copy: "Kopiera texten",
    copied: "Kopierad, med tabellerna för ställen där de går att klistra in.",
    copiedPlain: "Kopierad som ren text.",
    notCopied:
      "Webbläsaren lät den inte kopieras. Markera texten och kopiera den för hand, eller ladda ner den.",
    download: "Ladda ner",
    publish: "Publicera: spara den här versionen",
    publishText: "Sparar texten och dess siffror som de är i dag; senare ändringar rör dem inte.",
    published: (date) => `Versionen från ${date} är sparad.`,
    versions: "Publicerade versioner",
    noVersions: "En sparad version förblir som den var, vad som än ändras sedan.",
    version: (date) => `Version från ${date}`,
    versionSize: (bytes) => `${bytes} byte`,
    show: "visa",
    fileName: "texten",
  },
};
