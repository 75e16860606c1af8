import type { deskWords as en } from "../en/desk.ts";
import { capital, listed, spelled } from "./say.ts";

const things = (n: number): string => (n === 1 ? "1 sak i förrådet" : `${n} saker i förrådet`);
const kits = (n: number): string => `${n} kit`;

/** Skrivbordets ord. */
export const deskWords: typeof en = {
  first: {
    title: "En ny anteckningsbok",
    what: "Understudy sätter ihop ett kit som en gång skickades ut av det material du äger, säger vad som ersätter vad och varför, och om kitet hade varit värt sitt pris där du bor.",
    lead: "Det du skriver stannar i den här webbläsaren, på den här enheten.",
    leadMore: "Ingenting skickas någonstans. Spara en kopia då och då: Säkert förvar gör det med ett klick.",
    leadGone: "Webbläsaren sparar ingenting här, så det du skriver finns bara tills fliken stängs.",
    leadGoneMore: "Spara en kopia innan du stänger den, eller öppna appen i ett vanligt fönster.",
    waysTitle: "Sätt att börja",
    sampleTitle: "Se dig om i ett exempel",
    sampleText:
      "Ett påhittat år: ett förråd, tio kit från två tillverkare, priser i tre länder och ett färdigt omtag. Ett klick tar bort det igen.",
    sampleAct: "Prova exemplet",
    sampleLoading: "Hämtar exemplet",
    stashTitle: "Börja med det du äger",
    stashText: "Skriv upp saker som du skulle säga dem, eller klistra in en lista.",
    stashAct: "Börja på mitt förråd",
    kitTitle: "Börja med ett kit",
    kitText: "Vilket kit som helst som en gång skickades ut: innehållet, vad det kostade, uppgiften.",
    kitAct: "Skriv in ett kit",
    restoreTitle: "Ta tillbaka en kopia",
    restoreText: "En fil som du har sparat här eller på en annan enhet.",
    restoreAct: "Återställ en kopia",
  },

  emptied: {
    title: "Ta tillbaka din anteckningsbok",
    lead: (stash, kitCount, date) =>
      `Den ${date} fanns ${things(stash)} och ${kits(kitCount)} i den här webbläsaren.`,
    leadMore:
      "Den har rensat sin lagring sedan dess. Välj den senaste kopian du sparade, så är allt tillbaka.",
    act: "Välj en kopia",
    anew: "Eller börja om från början",
  },

  sample: {
    label: "Prova exemplet",
    note: "Det här är exemplet. Ändra vad du vill: allt är påhittat.",
    remove: "Ta bort exemplet",
    removed: "Exemplet är borttaget. Det du själv har lagt till finns kvar.",
    failed: "Exemplet gick inte att hämta. Kontrollera att du är uppkopplad och försök igen.",
  },

  next: {
    title: {
      "stand-ins": "Härnäst: ersättarna",
      bench: "Härnäst: bänken",
      verdict: "Härnäst: omdömet",
      "write-up": "Härnäst: texten",
    },
    go: {
      "stand-ins": "Se över ersättarna",
      bench: "Fortsätt vid bänken",
      verdict: "Säg vad det var värt",
      "write-up": "Fortsätt med texten",
    },
    step: (date, step) => `omtag påbörjat ${date}, steg ${step} av 4`,
    prompt: (text) => `Uppgift: ${text}`,
    fetched: (done, all) =>
      done === 0 ? "Inget är hämtat än." : `${done === all ? "Allt" : `${done} av ${all}`} är hämtat.`,
    fetch: (left) => (left === 1 ? "Hämta den sista" : `Hämta de andra ${spelled(left)}`),
    fetchAll: (count) => (count === 1 ? "Hämta den" : `Hämta alla ${spelled(count)}`),
    for: (name) => `för ${name}`,
    nothing: "inget nära",
    left: "utelämnad",
    strip: "Dess ersättare",
    others: "Också på gång",
    noLines: "Innehållet är inte inskrivet än.",
    logLines: "Skriv in innehållet",

    takeUpTitle: "Härnäst: ta om ett kit",
    takeUpLead: (kit, figure) => `Av ditt förråd blir det bäst ${kit}: ${figure} av 100.`,
    takeUpNone: "Varje kit som är inskrivet här har tagits om. Skriv in ett till, eller ta om ett igen.",
    takeUpAct: "Börja ett omtag",
    logTitle: "Härnäst: skriv in ett kit",
    logLead: "Ditt förråd är påbörjat. Skriv in ett kit och se hur väl du skulle kunna sätta ihop det.",
    logAct: "Skriv in ett kit",
    stashTitle: "Härnäst: ditt förråd",
    stashLead: "Ett kit är inskrivet. Lägg in det du äger i förrådet, så hittar varje sak sin närmaste.",
    stashAct: "Börja på mitt förråd",
  },

  coverage: {
    title: "Skulle jag kunna sätta ihop dem?",
    all: (count) => (count === 1 ? "Det enda kitet" : `Alla ${count} kit`),
    kit: "Kit",
    colours: "Några av färgerna",
    items: "Saker",
    gaps: "Luckor",
    weakest: "Svagast",
    figure: "Av 100",
    gapCount: (count) => (count === 0 ? "inga" : count === 1 ? "1 lucka" : `${count} luckor`),
    from: (maker, month) => `${maker}, ${month}`,
    asked: (names) => `önskat av ${listed(names)}`,
    askedSomebody: "önskat",
    received: "fått förut",
    whyLabel: "varför just de här?",
    whyAbout: "hur kiten ordnas",
    why: "Varje sak i ett kit jämförs med allt du äger, och varje sak kan bara ta en plats. ”Av 100” är hur nära ersättarna kommer i genomsnitt; en sak utan något nära räknas som 0. Kit som har ett omtag är inte med här.",
    hidden: (count) => `${capital(spelled(count, "inga", "ett"))} kit har ett omtag och visas inte.`,
  },

  prices: {
    title: "Priser att se över",
    none: "Varje rad har ett pris som hittats, och kurserna är färska.",
    missing: (places) => `inget pris för ${listed(places)}`,
    guess: "en gissning",
    scaled: "räknat ur en annan förpackning",
    oldRates: (date) => `Kurser från ${date}`,
    daysBefore: (days, date) => `${days} dagar före priserna per ${date}`,
    noDay: "för vilken dag är inte sagt",
    noRates: "Inga växelkurser än",
    noRatesFact: "lägg till en kurstabell under Marknader",
    more: (count) => `och ${count} till`,
  },

  kept: {
    title: "I säkert förvar",
    never: "Ingen säkerhetskopia har sparats från den här webbläsaren än.",
    today: (time) => `Senaste kopian sparades i dag ${time}.`,
    on: (date) => `Senaste kopian sparades ${date}.`,
    holds: (stash, kitCount) => `${things(stash)}, ${kits(kitCount)}.`,
    gone: "Ingenting sparas i den här webbläsaren. Spara en kopia innan du stänger fliken.",
    act: "Spara en kopia nu",
    place: "Fler sätt att hålla det säkert",
  },
};
