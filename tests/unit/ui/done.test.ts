import { expect, it } from "vitest";
import { asDone } from "../../../src/ui/words/en/done.ts";

it.each([
  ["Log the kit April light", "Logged the kit April light"],
  ["Add the market Japan", "Added the market Japan"],
  ["Take 1 piece of Gouache, moss", "Took 1 piece of Gouache, moss"],
  ["Fetched: Gouache, moss", "Fetched: Gouache, moss"],
  ["", ""],
])("“%s” is said as “%s” once it is done", (label, done) => {
  expect(asDone(label)).toBe(done);
});
