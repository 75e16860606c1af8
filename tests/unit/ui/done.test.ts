import { expect, it } from "vitest";
import { storeWords } from "../../../src/store/words/sv.ts";
import { asDone } from "../../../src/ui/words/en/done.ts";
import { asDone as asDoneSwedish } from "../../../src/ui/words/sv/done.ts";

it.each([
  ["Log the kit April light", "Logged the kit April light"],
  ["Add the market Japan", "Added the market Japan"],
  ["Take 1 piece of Gouache, moss", "Took 1 piece of Gouache, moss"],
  ["Fetched: Gouache, moss", "Fetched: Gouache, moss"],
  ["", ""],
])("“%s” is said as “%s” once it is done", (label, done) => {
  expect(asDone(label)).toBe(done);
});

it.each([
  ["Skriv in kitet Aprilljus", "Skrev in kitet Aprilljus"],
  ["Lägg till marknaden Japan", "Lade till marknaden Japan"],
  ["Ta bort Gouache, mossa från förrådet", "Tog bort Gouache, mossa från förrådet"],
  ["Ge ett omdöme om kitet", "Gav ett omdöme om kitet"],
  ["Välj vad som ersätter Gouache, mossa", "Valde vad som ersätter Gouache, mossa"],
  ["Hämtat: Gouache, mossa", "Hämtat: Gouache, mossa"],
  ["", ""],
])("”%s” heter ”%s” när det är gjort", (label, done) => {
  expect(asDoneSwedish(label)).toBe(done);
});

it("knows the verb of every act that the store names in Swedish", () => {
  const { bringBack, removeSample, addKinships, removeKinship, addPhoto, addRequest, addLogEntry } =
    storeWords;
  const labels = [
    bringBack,
    removeSample,
    addKinships(1),
    addKinships(2),
    removeKinship,
    addPhoto,
    addRequest,
    addLogEntry,
    ...[storeWords.addKit, storeWords.nameBook, storeWords.setPick, storeWords.clearPick].map((say) =>
      say("X"),
    ),
    ...[storeWords.settle, storeWords.unsettle, storeWords.setVerdict, storeWords.startRemake].map((say) =>
      say("X"),
    ),
    ...[storeWords.change, storeWords.moveLine, storeWords.removeLine, storeWords.addTier].map((say) =>
      say("name", "X"),
    ),
    storeWords.takeOut(2, "sheet", "X"),
    storeWords.goBack("X"),
  ];
  expect(labels.filter((label) => asDoneSwedish(label) === label)).toEqual([]);
});
