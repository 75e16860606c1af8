import type { Supply } from "../../../engine/supply/index.ts";
import { factsOf } from "../../words/engine/supply.ts";
import { format } from "../../words/index.ts";

/** What is known of a supply, on one line: "tube, 15 ml, opaque". */
export const factsText = (supply: Supply): string => factsOf(supply, (n) => format.number(n, 2)).join(", ");
