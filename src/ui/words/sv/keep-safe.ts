import type { keepSafeWords as en } from "../en/keep-safe.ts";

const changes = (count: number): string => (count === 1 ? "en ändring" : `${count} ändringar`);
const records = (count: number): string => (count === 1 ? "1 post" : `${count} poster`);

/** Ord för Säkert förvar. */
export const keepSafeWords: typeof en = {
  title: "Säkert förvar",

  state: {
    empty: "Det finns inget att spara än.",
    never: "Ingen säkerhetskopia har sparats från den här webbläsaren än.",
    notKept: "Inget här finns kvar när fliken stängs.",
    fresh: (when) => `Din senaste säkerhetskopia, från ${when}, har allt.`,
    since: (when, count) => `Din senaste säkerhetskopia är från ${when}, ${changes(count)} sedan dess.`,
    where:
      "Allt ligger i den här webbläsaren, på den här enheten. Bara en kopia någon annanstans lever längre.",
    due: "Dags för en ny.",
    dueFirst: "Dags för en.",
    notKeptMore:
      "Webbläsaren sparar ingenting: ett privat fönster, eller så är lagringen avstängd. Spara en kopia innan du stänger.",
    at: (date, time) => `${date}, ${time}`,
  },

  copy: {
    title: "Spara en kopia",
    text: "En fil med allt i, foton också. Lägg den någon annanstans: på ett minne, på en annan enhet, i en mapp som kopieras.",
    act: "Spara en kopia",
    written: (name, count, size) => `Skriven: ${name}, ${records(count)}, ${size}.`,
    writtenWith: (name, count, photos, size) =>
      `Skriven: ${name}, ${records(count)}, ${photos === 1 ? "1 foto" : `${photos} foton`}, ${size}.`,
    missing: (count) =>
      count === 1
        ? "1 foto finns inte på den här enheten och är därför inte med."
        : `${count} foton finns inte på den här enheten och är därför inte med.`,
    checked: "Den lästes tillbaka och är hel.",
    faulty: "Den skrevs, men när den läses tillbaka finns det fel i den. Behåll en äldre kopia också.",
    name: "Vad arbetsboken heter",
    nameHint: "det kommer med i filens namn",
    offer: "Spara en kopia av allt",
  },

  restore: {
    title: "Ta tillbaka en kopia",
    text: "Ingenting ändras förrän du har sett vad den innehåller och sagt ja.",
    pick: "Välj en kopia",
    dialog: (when) => (when === null ? "Återställa den här kopian?" : `Återställa kopian från ${when}?`),
    act: "Återställ den",
    keep: "Behåll det som finns här",
    instead:
      "Den tar platsen för det som finns här. Det som finns här nu ställs undan först, och Ångra tar tillbaka det.",
    damaged:
      "Den har ändrats efter att den skrevs, för hand eller av misstag. Den är hel, men kanske inte det du sparade.",
    odd: (count) => (count === 1 ? "En sak i den ser konstig ut:" : `${count} saker i den ser konstiga ut:`),
    label: (name) => `Återställ ${name}`,
    done: (count) => `Kopian är återställd: ${records(count)}`,
    refused: (name) => `${name} återställdes inte`,
    refusedText: (count) =>
      count === 1
        ? "En sak i den är fel. Ingenting här har ändrats."
        : `${count} saker i den är fel. Ingenting här har ändrats.`,
    faults: "Vad som är fel, och var",
    remedy: (text) => `Vad som vore rätt: ${text}.`,
    another: "Välj en annan fil",
    failed: "Inget återställdes",
    notText: {
      problem: "inte text i UTF-8",
      remedy: "välj en kopia som Understudy har skrivit, eller spara om filen som UTF-8",
    },
    unread: {
      problem: "den går inte att läsa",
      remedy: "välj den igen, eller kopiera den först till den här enheten",
    },
    archive: {
      "too-large": {
        problem: "ett arkiv större än 320 MB",
        remedy: "välj en kopia som Understudy har skrivit",
      },
      bomb: {
        problem: "uppackad blir den mycket större än den ser ut",
        remedy: "välj en kopia som Understudy har skrivit",
      },
      damaged: {
        problem: "ett skadat arkiv",
        remedy: "kopiera det till enheten igen, eller välj en äldre kopia",
      },
      locked: { problem: "ett arkiv med lösenord", remedy: "packa upp det och välj arbetsboken i det" },
      hostile: {
        problem: "ett arkiv med namn som pekar ut ur det, som bara skadliga har",
        remedy: "välj en kopia som Understudy har skrivit",
      },
      "no-copy": {
        problem: "ett arkiv utan arbetsbok i",
        remedy: "välj en kopia som Understudy har skrivit",
      },
    },
    leftOut: (count) =>
      count === 1
        ? "1 foto i den är skadat, eller inte så som appen sparar foton, och lämnas utanför."
        : `${count} foton i den är skadade, eller inte så som appen sparar foton, och lämnas utanför.`,
    missing: (count) =>
      count === 1
        ? "1 foto som den nämner finns inte i filen. Finns det på den här enheten visas det ändå."
        : `${count} foton som den nämner finns inte i filen. De som finns på den här enheten visas ändå.`,
  },

  counts: {
    caption: "Det som finns här bredvid det som finns i kopian",
    what: "Vad",
    here: "Här nu",
    there: "I kopian",
    stash: "Saker i förrådet",
    kits: "Kit",
    lines: "Rader i kit",
    remakes: "Omtag",
    markets: "Marknader",
    rates: "Dagar med kurser",
    shops: "Butiker",
    parcels: "Paket",
    kinships: "Kopplade produkter",
    photos: "Foton",
    requests: "Önskemål",
  },

  snapshots: {
    title: "Gå tillbaka till en hel anteckningsbok",
    text: "Innan något stort görs ställs allt undan här. De tio senaste sparas.",
    none: "Inget undanställt än",
    noneText:
      "Innan du återställer en kopia, lägger in ett exempel eller tar bort allt ställs det som finns undan här.",
    caption: "Undanställt, det nyaste först",
    when: "När",
    before: "Före",
    records: "Poster",
    act: "gå tillbaka hit",
    about: (label) => `, som det var före: ${label}`,
    done: (label) => `Tillbaka till före: ${label}`,
  },

  history: {
    title: "Vad som har gjorts",
    none: "Inget har gjorts än",
    noneText: "Varje ändring kommer att stå här, med tiden, och kan ångras i tur och ordning.",
    caption: "Ändringar, de nyaste först",
    when: "När",
    what: "Vad",
    how: "",
    undo: (label) => `Ångra: ${label}`,
    redo: (label) => `Gör om: ${label}`,
    more: "Visa fler",
    kinds: { do: "", undo: "ångrat", redo: "gjort om" },
    unread: "Historiken går inte att läsa just nu.",
  },

  health: {
    title: "Webbläsarens lagring",
    promised: "Webbläsaren har lovat att inte rensa den på egen hand.",
    notPromised: "Webbläsaren har inte lovat att behålla den: vid platsbrist kan den rensas.",
    unknown: "Webbläsaren säger inte om den tänker behålla den.",
    ask: "Be den behålla allt",
    granted: "Den har lovat att behålla allt",
    denied:
      "Den lovade inget. En del gör det när en sida används ofta eller ligger på hemskärmen. Spara kopior till dess.",
    used: (used, quota) => `${used} används, av ungefär ${quota} som skulle få plats.`,
    usedOnly: (used) => `${used} används.`,
    usedUnknown: "Den säger inte hur mycket plats som används.",
    clears: "Om webbplatsens data rensas i webbläsaren, eller webbläsaren tas bort, försvinner allt.",
  },

  device: {
    title: "Den här enheten",
    language: "Ord på",
    languageHint: "Sidan laddas om; inget går förlorat.",
    numbers: "Siffror och datum",
    numbersHint: "Beloppen behåller sin egen valuta.",
    asBrowser: (sample) => `Som webbläsaren: ${sample}`,
    keys: "Enstaka tangenter gör saker",
    keysMore: "till exempel / för sökfältet; stäng av det om du talar eller dikterar till enheten",
    chord: "Ctrl Z och Ctrl Shift Z ångrar och gör om, och Ctrl / går till sökfältet; Cmd fungerar lika bra.",
  },

  clear: {
    title: "Ta bort allt",
    text: "Tömmer anteckningsboken i den här webbläsaren. Kopior som du har sparat någon annanstans rörs inte.",
    act: "Ta bort allt",
    dialog: "Ta bort allt?",
    holds: (count) =>
      `${count === 1 ? "En post" : `${count} poster`} försvinner. Allt ställs undan först, och Ångra tar tillbaka det.`,
    traces: "För att inget ska bli kvar på enheten: rensa efteråt webbplatsens data i webbläsaren.",
    withCopy: "Spara en kopia, ta sedan bort",
    without: "Ta bort utan kopia",
    keep: "Behåll allt",
    label: "Ta bort allt",
    done: "Allt är borttaget",
    nothing: "Det finns inget att ta bort.",
  },

  bytes: (figure, unit) => `${figure} ${unit}`,
};
