import { fill } from "./app.mjs";
import { median, within } from "./result.mjs";

const runs = 3;
const slowDown = 4;

/** Notes what the browser says of a page: largest paint, shifts, long tasks, and how long keys and clicks took. */
const watchPage = (page) =>
  page.addInitScript(() => {
    const seen = { lcp: 0, cls: 0, tasks: [], events: [] };
    globalThis.seen = seen;
    const watch = (type, take, options = {}) =>
      new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({
        type,
        buffered: true,
        ...options,
      });
    watch("largest-contentful-paint", ({ startTime }) => {
      seen.lcp = startTime;
    });
    watch("layout-shift", ({ value, hadRecentInput }) => {
      if (!hadRecentInput) seen.cls += value;
    });
    watch("longtask", ({ startTime, duration }) => seen.tasks.push({ startTime, duration }));
    watch(
      "event",
      ({ name, duration, interactionId }) => {
        if (interactionId) seen.events.push({ name, duration });
      },
      { durationThreshold: 16 },
    );
  });

/** A page of its own on a machine slowed down four times. */
async function slowPage(context, address) {
  const page = await context.newPage();
  await watchPage(page);
  const cdp = await context.newCDPSession(page);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: slowDown });
  await page.goto(address);
  await page.locator("h1:visible").waitFor();
  await page.waitForTimeout(2_500); // until nothing larger comes
  return page;
}

async function load(context, address) {
  const page = await slowPage(context, address);
  const seen = await page.evaluate(() => globalThis.seen);
  await page.close();
  return seen;
}

/** Types a text; for each key the time until the page last changed and painted, up to half a second after it. */
async function typeIn(page, field, text) {
  await field.focus();
  await page.waitForTimeout(500);
  const took = [];
  for (const key of text) {
    await page.evaluate(() => {
      globalThis.answered = new Promise((done) => {
        addEventListener(
          "keydown",
          () => {
            const began = performance.now();
            let last = began;
            const changes = new MutationObserver(() => {
              requestAnimationFrame(() =>
                setTimeout(() => {
                  last = performance.now();
                }),
              );
            });
            changes.observe(document.body, {
              subtree: true,
              childList: true,
              characterData: true,
              attributes: true,
            });
            setTimeout(() => {
              changes.disconnect();
              done(last - began);
            }, 700);
          },
          { once: true, capture: true },
        );
      });
    });
    await page.keyboard.press(key === " " ? "Space" : key);
    took.push(await page.evaluate(() => globalThis.answered));
  }
  return took;
}

const worstEvent = async (page) =>
  page.evaluate(() => Math.max(0, ...globalThis.seen.events.map(({ duration }) => duration)));

async function searches(context, name, address, fieldOf) {
  const page = await slowPage(context, address);
  const took = await typeIn(page, fieldOf(page), "pale sea");
  const inp = await worstEvent(page);
  await page.close();
  const each = took.map((one) => one.toFixed(0)).join(", ");
  return [
    within(
      "U9",
      `${name}: the slowest key until it is answered`,
      Math.max(...took),
      50,
      "ms",
      `by key ${each}`,
    ),
    within("U9", `${name}: the slowest interaction (INP)`, inp, 100, "ms"),
  ];
}

const places = [
  { name: "the Desk", address: "/" },
  { name: "the stash as a list", address: "/stash?view=list" },
  { name: "the stash by colour", address: "/stash" },
];

/** U9 of the quality bar: 10,000 things on a machine four times slower. */
export async function slowMachine(context) {
  await fill(context, 10_000);
  const found = [];
  for (const { name, address } of places) {
    const all = [];
    for (let run = 0; run < runs; run += 1) all.push(await load(context, address));
    const lcp = median(all.map((one) => one.lcp));
    const tasks = all[0].tasks.map(({ duration }) => duration.toFixed(0)).join(", ");
    found.push(within("U9", `${name}: largest paint (LCP)`, lcp, 1_500, "ms", `long tasks ${tasks} ms`));
    found.push(within("U9", `${name}: shift (CLS)`, Math.max(...all.map(({ cls }) => cls)), 0, ""));
  }
  found.push(
    ...(await searches(context, "the stash's search", "/stash?view=list", (page) =>
      page.getByLabel(/^Search the stash/),
    )),
    ...(await searches(context, "the search field", "/", (page) => page.getByRole("combobox").first())),
  );
  return found;
}
