/** The word an act's name begins with, and the same as something done. */
const doneBy: ReadonlyMap<string, string> = new Map([
  ["Anteckna", "Antecknade"],
  ["Använd", "Använde"],
  ["Avsluta", "Avslutade"],
  ["Behåll", "Behöll"],
  ["Bocka", "Bockade"],
  ["Byt", "Bytte"],
  ["Börja", "Började"],
  ["Döp", "Döpte"],
  ["Flytta", "Flyttade"],
  ["Ge", "Gav"],
  ["Gå", "Gick"],
  ["Gör", "Gjorde"],
  ["Håll", "Höll"],
  ["Hämta", "Hämtade"],
  ["Koppla", "Kopplade"],
  ["Logga", "Loggade"],
  ["Låt", "Lät"],
  ["Lägg", "Lade"],
  ["Lämna", "Lämnade"],
  ["Markera", "Markerade"],
  ["Publicera", "Publicerade"],
  ["Rensa", "Rensade"],
  ["Rätta", "Rättade"],
  ["Skriv", "Skrev"],
  ["Slå", "Slog"],
  ["Spara", "Sparade"],
  ["Ställ", "Ställde"],
  ["Säg", "Sade"],
  ["Sätt", "Satte"],
  ["Ta", "Tog"],
  ["Töm", "Tömde"],
  ["Tänj", "Tänjde"],
  ["Visa", "Visade"],
  ["Välj", "Valde"],
  ["Ändra", "Ändrade"],
  ["Återställ", "Återställde"],
]);

/** An act's name as what was just done: ”Logga kitet …” reads ”Loggade kitet …”. Others stay as they are. */
export function asDone(label: string): string {
  const [verb = ""] = label.split(" ", 1);
  return (doneBy.get(verb) ?? verb) + label.slice(verb.length);
}
