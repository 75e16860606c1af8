import { fill, open } from "./app.mjs";
import { median, ratio, within } from "./result.mjs";

const runs = 9;

/** Goes to an address in the app, until something there is painted; in milliseconds, with the nodes it came to. */
const painted = (page, address, what) =>
  page.evaluate(
    async ([to, selector]) => {
      const began = performance.now();
      history.pushState(null, "", to);
      dispatchEvent(new PopStateEvent("popstate"));
      while (!document.querySelector(selector)) await new Promise(requestAnimationFrame);
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done))); // after the frame with it
      return { ms: performance.now() - began, nodes: document.querySelectorAll("body *").length };
    },
    [address, what],
  );

const views = [
  { name: "the list", address: "/stash?view=list" },
  { name: "the layout by colour", address: "/stash" },
];

/** P13: the stash of 10,000 beside the stash of 1,000, each in its own browser profile. */
export async function longLists(context) {
  const other = await context.browser().newContext({ baseURL: context._options?.baseURL });
  const pages = [];
  for (const [place, count] of [
    [context, 10_000],
    [other, 1_000],
  ]) {
    await fill(place, count);
    const page = await place.newPage();
    await open(page, "/kits");
    pages.push(page);
  }
  const found = [];
  for (const { name, address } of views) {
    const took = [[], []];
    for (let run = 0; run <= runs; run += 1) {
      for (const [index, page] of pages.entries()) {
        await page.evaluate(() => globalThis.gc());
        took[index].push(await painted(page, address, "main [data-slot]"));
        await painted(page, "/kits", "main h1");
      }
    }
    const [first] = took[0]; // the very first also reads all of the stash; it is told beside, and U9 has its limit
    const [many, few] = took.map((all) => all.slice(1));
    const ms = (all) => median(all.map((one) => one.ms));
    const nodes = (all) => median(all.map((one) => one.nodes));
    const more = `the first time ${first.ms.toFixed(0)} ms`;
    found.push(ratio("P13", `${name} of 10,000 ÷ of 1,000, until painted`, ms(many), ms(few), 1.2, more));
    const limit = name === "the list" ? 1 : 1.2;
    found.push(
      within(
        "P13",
        `${name} of 10,000 ÷ of 1,000, nodes`,
        nodes(many) / nodes(few),
        limit,
        "x",
        `${nodes(many)} nodes`,
      ),
    );
  }
  await other.close();
  return found;
}
