import { readChartPhoto } from "./chart-gate.ts";
import { search } from "./search-gates.ts";
import { bringIn, coldStart, editOne, fill } from "./store-gates.ts";

Object.assign(globalThis, { bench: { coldStart, bringIn, editOne, fill, search, readChartPhoto } });
