import { bringLists } from "./bring-lists.mjs";
import { longLists } from "./long-lists.mjs";
import { median, ratio, within } from "./result.mjs";
import { slowMachine } from "./slow-machine.mjs";

/** What `work` gives on the page that times the store's and the engine's own code. */
async function onBenchPage(context, work, ...given) {
  const page = await context.newPage();
  await page.goto("/bench/index.html");
  await page.waitForFunction(() => globalThis.bench);
  const found = await page.evaluate(([name, values]) => globalThis.bench[name](...values), [work, given]);
  await page.close();
  return found;
}

const palettes = ["uniform", "crowded"];

/** One gate for each palette. */
const eachPalette = (measure) => async (context) => {
  const found = [];
  for (const palette of palettes) found.push(...(await measure(context, palette)));
  return found;
};

const coldStart = eachPalette(async (context, palette) => {
  const { ours, peer, whole } = await onBenchPage(context, "coldStart", 11, 10_000, palette);
  const more = `with what can be undone ${median(whole).toFixed(0)} ms`;
  return [
    ratio("P10", `cold start, 10,000 ${palette} ÷ Dexie toArray`, median(ours), median(peer), 0.4, more),
  ];
});

const bringIn = eachPalette(async (context, palette) => {
  const { ours, peer } = await onBenchPage(context, "bringIn", 7, 10_000, palette);
  return [
    ratio("P11", `bring in 10,000 ${palette} ÷ Dexie bulkPut, 2 indexes`, median(ours), median(peer), 0.3),
  ];
});

const editOne = eachPalette(async (context, palette) => {
  const { ours, peer } = await onBenchPage(context, "editOne", 21, 10_000, palette);
  return [ratio("P12", `edit one of 10,000 ${palette} ÷ reading the table`, median(ours), median(peer), 0.1)];
});

const search = eachPalette(async (context, palette) => {
  const { stash, finder, peer } = await onBenchPage(context, "search", 5, 50_000, palette);
  const said = ({ worst, at, build }) =>
    `worst “${at}”; made ready in ${build.toFixed(0)} ms; ${worst.toFixed(1)} ms`;
  return [
    ratio(
      "P14",
      `a key in the stash's search, 50,000 ${palette} ÷ MiniSearch`,
      stash.worst,
      peer.worst,
      0.1,
      said(stash),
    ),
    ratio(
      "P14",
      `a key in the search field, 50,000 ${palette} ÷ MiniSearch`,
      finder.worst,
      peer.worst,
      0.1,
      said(finder),
    ),
  ];
});

async function photo(context) {
  const { whole, reading, bytes } = await onBenchPage(context, "readChartPhoto", 3);
  const more = `the chart alone ${median(reading).toFixed(0)} ms; a JPEG of ${(bytes / 1e6).toFixed(1)} MB`;
  return [within("photo", "a chart read from a photo of 12 megapixels", median(whole), 3_000, "ms", more)];
}

/** What is measured, in order. `names` are what it can be asked for by. */
export const gates = [
  { names: ["P10"], measure: coldStart },
  { names: ["P11"], measure: bringIn },
  { names: ["P12"], measure: editOne },
  { names: ["P13"], measure: longLists },
  { names: ["P14"], measure: search },
  { names: ["list"], measure: bringLists },
  { names: ["photo"], measure: photo },
  { names: ["U9"], measure: slowMachine },
];
