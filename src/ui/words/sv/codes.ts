import type { codeWords as en } from "../en/codes.ts";

/** Ord för att söka på streckkod. */
export const codeWords: typeof en = {
  title: "Sök på streckkod",
  lead: "Numret under strecken hittar saken.",
  leadMore: "Skriv det, håll strecken framför kameran, eller välj ett foto av dem.",
  note: "Det kameran ser stannar på den här enheten, och inget av det sparas.",
  number: "Numret under strecken",
  numberHint: "8, 12, 13 eller 14 siffror, med eller utan mellanrum",
  find: "Sök",
  camera: "Använd kameran",
  stop: "Stäng av kameran",
  photo: "Välj ett foto av strecken",
  looking: "Håll strecken framför kameran, hela och i bra ljus.",
  view: "Vad kameran ser",
  reading: "Tittar på fotot …",
  notes: {
    empty: "Det finns inget nummer än.",
    letters: "Under strecken står bara siffror.",
    slip: "Den sista siffran stämmer inte med de andra, så någon av dem är felskriven. Se över dem.",
    unseen: "Ingen streckkod syns i fotot. Ta det rakt framifrån, närmare och skarpt, eller skriv numret.",
    noCamera: "Det finns ingen kamera här. Skriv numret, eller välj ett foto av strecken.",
    denied:
      "Kameran får inte användas. Tillåt den för sidan i webbläsaren, eller skriv numret, eller välj ett foto av strecken.",
    busy: "Kameran går inte att använda just nu. Ett annat program kan ha den. Skriv numret, eller välj ett foto av strecken.",
  },
  length: (count, isOne) => `En streckkod har 8, 12, 13 eller 14 siffror. Det här är ${isOne ? "1" : count}.`,
  found: (code, count, isOne) => (isOne ? `Det här är ${code}` : `${count} av dina saker har ${code}`),
  unknown: (code) => `Ingen av dina saker har ${code}`,
  unknownText: "Lägg till den en gång, så hittar strecken den från och med då.",
  add: "Lägg till en sak med det här numret",
  adding: (code) => `Det du skriver här får numret ${code}.`,
};
