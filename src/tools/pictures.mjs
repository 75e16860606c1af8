// Takes the pictures of docs/pictures from the built app with the sample in it (npm run pictures).
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { build, preview } from "vite";
import { findChromium } from "./chromium.mjs";

const folder = fileURLToPath(new URL("../../docs/pictures/", import.meta.url));
const wide = { width: 1440, height: 1000 };
const phone = { width: 390, height: 844 };
const standIns = "/remakes/rm-low-light/stand-ins";
const worth = "/kits/sp-2026-04/worth";

const pictures = [
  ["desk", "/", wide, "light"],
  ["kits", "/kits", wide, "light"],
  ["contents", "/kits/sp-2026-04/contents", wide, "light"],
  ["prices", "/kits/sp-2026-04/prices", wide, "light"],
  ["worth", worth, wide, "light"],
  ["stash", "/stash", wide, "light"],
  ["stand-ins", standIns, wide, "light"],
  ["bench", "/remakes/rm-slow-thaw/bench", wide, "light"],
  ["verdict", "/remakes/rm-slow-thaw/verdict", wide, "light"],
  ["write-up", "/remakes/rm-slow-thaw/write-up", wide, "light"],
  ["markets", "/markets", wide, "light"],
  ["keep-safe", "/keep-safe", wide, "light"],
  ["stand-ins-dark", standIns, wide, "dark"],
  ["worth-dark", worth, wide, "dark"],
  ["stand-ins-phone", standIns, phone, "light"],
  ["worth-phone", worth, phone, "light"],
  ["stash-phone", "/stash", phone, "dark"],
];

// A4 between its margins, in px; src/ui/styles/print.css.
const sheet = { width: 673, height: 1005, margins: "53px 60px 64px" };

/** The first printed sheet of an address, up to the end of `part`, on a grey table. */
async function takeSheet(page, url, part, path) {
  await page.setViewportSize({ width: sheet.width, height: sheet.height });
  await page.emulateMedia({ media: "print" });
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  const { y, height } = await page.locator(part).boundingBox();
  const clip = { x: 0, y: 0, width: sheet.width, height: Math.ceil(y + height) };
  const png = (await page.screenshot({ clip, fullPage: true, animations: "disabled" })).toString("base64");
  const table = await page.context().newPage();
  await table.setViewportSize({ width: 873, height: 1203 });
  await table.setContent(
    `<body style="margin:0;padding:40px;background:#d9ddd6"><div style="width:${sheet.width}px;height:${sheet.height}px;padding:${sheet.margins};background:#fff"><img src="data:image/png;base64,${png}"></div>`,
  );
  await table.screenshot({ path });
  await table.close();
}

async function withSample(browser, base, viewport, colorScheme) {
  const context = await browser.newContext({
    viewport,
    colorScheme,
    locale: "en-IE",
    timezoneId: "Europe/Stockholm",
  });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date("2026-05-07T19:14:00Z"));
  await page.goto(base);
  await page.getByRole("button", { name: "Try the sample" }).click();
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  return page;
}

await build({ logLevel: "warn" });
const server = await preview({ logLevel: "warn", preview: { port: 4395 } });
const browser = await chromium.launch({
  executablePath: await findChromium(),
  args: ["--no-sandbox", "--disable-gpu"],
});
mkdirSync(folder, { recursive: true });
const base = server.resolvedUrls?.local[0] ?? "http://127.0.0.1:4395/";
const pages = new Map();
for (const [name, path, viewport, scheme] of pictures) {
  const key = `${viewport.width} ${scheme}`;
  const page = pages.get(key) ?? (await withSample(browser, base, viewport, scheme));
  pages.set(key, page);
  await page.goto(new URL(path, base).href);
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: `${folder}${name}.png`, animations: "disabled" });
  console.log(`docs/pictures/${name}.png`);
}
const page = await withSample(browser, base, wide, "light");
await takeSheet(page, new URL(standIns, base).href, "section:has(> #spine)", `${folder}printed.png`);
console.log("docs/pictures/printed.png");
await browser.close();
await server.close();
