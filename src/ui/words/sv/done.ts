/** The verbs of acts that do not go like "ändra, ändrade". */
const irregular: ReadonlyMap<string, string> = new Map([
  ["Använd", "Använde"],
  ["Behåll", "Behöll"],
  ["Byt", "Bytte"],
  ["Döp", "Döpte"],
  ["Ge", "Gav"],
  ["Gå", "Gick"],
  ["Håll", "Höll"],
  ["Låt", "Lät"],
  ["Lägg", "Lade"],
  ["Slå", "Slog"],
  ["Skriv", "Skrev"],
  ["Ta", "Tog"],
  ["Välj", "Valde"],
  ["Återställ", "Återställde"],
]);

/** An act's name as what was just done: ”Skriv in kitet …” reads ”Skrev in kitet …”. Others stay as they are. */
export function asDone(label: string): string {
  const [verb = ""] = label.split(" ", 1);
  const done = irregular.get(verb) ?? verb.replace(/\p{Ll}a$/u, "$&de");
  return done + label.slice(verb.length);
}
