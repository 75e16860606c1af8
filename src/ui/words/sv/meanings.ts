import type { meanings as en, meaningsPage as enPage } from "../en/meanings.ts";

/** Vad våra egna ord betyder. */
export const meanings: typeof en = {
  kit: { text: "Det som en prenumeration en gång skickade ut: materialen, uppgiften och vad det kostade." },
  prompt: { text: "Uppgiften som följde med ett kit: vad du ska teckna eller måla med det." },
  stash: { text: "Allt du äger att teckna och måla med." },
  standIn: { text: "Den sak ur ditt förråd som tar en saks plats i kitet." },
  gap: {
    text: "Inget du äger ligger nära nog för den här platsen, så raden lämnas öppen.",
    behind: "Under 40 av 100 räknas inte som nära.",
  },
  near: {
    text: "Hur väl en sak ersätter en annan, från 0 till 100. Det man vet om sakens egenskaper i kitet jämförs en och en med din; färgen väger tyngst där det finns en.",
    behind:
      "Gowers allmänna likhet (1971) över egenskaperna, var och en med sin vikt. Från 85 är det mycket nära, från 65 ganska nära, från 40 i nödfall.",
  },
  apart: {
    text: "Hur olika två färger ser ut. Under 2 syns det bara sida vid sida, under 5 ligger de nära, över 20 är det en annan färg.",
    behind: "Skillnaden enligt CIEDE2000, ur CIELAB i dagsljus (D65).",
  },
  palette: {
    text: "Att välja ersättare så att kitets färger behåller avstånden till varandra: tre olika röda förblir tre olika, även om en av dem ensam kunde ligga närmare.",
  },
  steps: { text: "Hur mycket avstånden mellan kitets egna färger har ändrats med ersättarna." },
  twin: { text: "Precis samma produkt, såld under ett annat namn." },
  pinch: {
    text: "Det duger, men det syns: en annan sorts sak, eller en färg som missar.",
    behind: "40 till 64 av 100.",
  },
  work: { text: "Den duger när något har gjorts med den: ett ark skuret, två färger blandade." },
  lastResort: {
    text: "I ett kit som du har fått förut får precis samma sak vara med bara om inget annat kan.",
  },
  received: {
    text: "Ett kit som en gång skickades till dig. Dess egna saker och deras tvillingar hålls utanför omtaget, om du inte släpper in tvillingarna.",
  },
  remake: {
    text: "En omgång av utmaningen: ett kit hopsatt ur dina egna hyllor, uppgiften följd, ett verk gjort och visat.",
  },
  basics: {
    text: "Något att teckna med, teckna på eller sudda med. De får läggas till där kitet saknar dem, och räknas upp för sig.",
  },
  shown: {
    text: "Visat i inspelningen men inte använt i verket, en övergång till exempel. Räknas upp för sig.",
  },
  bent: {
    text: "En regel i leken som du har gått runt, och säger det: texten skriver ut vilken och varför.",
  },
  verdict: {
    text: "Vad du själv tycker om en sak eller om kitet: skulle du använda det, skulle du köpa det?",
  },
  writeup: {
    text: "Det som publiceras: texten under videon, med vad kitet innehöll och vad som ersatte det.",
  },
  sources: {
    text: "Det man vet om ett kit kommer från kort, bilder och inlägg, och de säger inte alltid samma sak. Alla behåller sitt ord, och du säger vilket som gäller.",
  },
  listPrice: {
    text: "Priset som tillverkaren begär, innan någon butik drar av något. Kallas också cirkapris.",
  },
  shopPrice: {
    text: "Det lägsta pris en butik begärde kring dagen som gäller, för precis samma förpackning och i lager.",
    behind: "Inom 90 dagar åt båda håll; det nyaste från varje butik räknas.",
  },
  found: { text: "Varje pris som har setts för en sak: var, vilken dag och vem som säger det." },
  goWith: { text: "Ett pris som du själv bestämmer, med ditt skäl. Det går före allt som hittats." },
  earlier: { text: "De priser som tidigare kits kort angav för en sak av samma slag." },
  tier: { text: "Ett sätt att prenumerera: månad för månad, en säsong, ett år. Varje sätt har sitt pris." },
  pays: {
    text: "Innehållet är värt mer än vad ett kit kostar på den nivån, även om priserna ligger lågt.",
  },
  hangs: {
    text: "Om det lönar sig går inte att säga förrän priset på en rad är bättre känt. Den raden nämns.",
  },
  wanted: { text: "Innehållet till butikspriser, där varje sak räknas bara så långt du skulle använda den." },
  breakEven: { text: "Så stor del av innehållet måste du ha nytta av innan kitet har betalat sig." },
  border: {
    text: "Tull, skatt och fraktbolagets avgift på det som skickas från ett annat land. De är uppskattningar: tullen eller skattemyndigheten där det kommer fram avgör.",
  },
  market: { text: "Ett land eller område som köparna känner det: pengarna, priserna och vad gränsen tar." },
  asOf: { text: "Den dag vars priser och växelkurser räknas för ett kit." },
  rates: {
    text: "Vad en valuta var värd i andra en viss dag. Varje kit räknas om efter de nyaste kurserna från sin dag eller före; en kurs gissas aldrig.",
  },
  notebook: { text: "Allt du har sparat här, i den här webbläsaren på den här enheten." },
  copy: { text: "Hela din anteckningsbok som en fil, att spara någon annanstans och kunna ta tillbaka." },
  setAside: {
    text: "Innan något stort görs sparas hela anteckningsboken som den var, så att du kan gå tillbaka till den.",
  },
};

export const meaningsPage: typeof enPage = {
  title: "Våra ord",
  lead: "Ord som betyder något särskilt här.",
  leadMore: "Du kan fråga dem där de står också: de prickade säger vad de betyder.",
  groups: {
    game: "Leken",
    near: "Hur nära",
    money: "Pengar",
    telling: "Att berätta",
    keeping: "Att spara",
  },
};
