import type { Verb } from "../verb.ts";
import { check } from "./check.ts";
import { coverageVerb } from "./coverage.ts";
import { differenceVerb } from "./difference.ts";
import { match } from "./match.ts";
import { prices } from "./prices.ts";
import { worth } from "./worth.ts";
import { writeup } from "./writeup.ts";

/** Every verb by its name, in the order the usage lists them. */
export const verbs: ReadonlyMap<string, Verb> = new Map([
  ["check", check],
  ["difference", differenceVerb],
  ["match", match],
  ["coverage", coverageVerb],
  ["prices", prices],
  ["worth", worth],
  ["writeup", writeup],
]);
