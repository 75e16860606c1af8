// Builds the app, serves it here alone, and times it beside its peers: npm run bench [gate …]
// Prints a table, writes nothing into the tree, and ends with 1 where a gate is missed.
import { mkdtempSync, rmSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { build, preview } from "vite";
import { gates } from "../../tests/bench/gates.mjs";
import { findChromium } from "./chromium.mjs";

const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--js-flags=--expose-gc", // the bench clears away one run's rubbish before the next begins
];

/** The built app with the bench's page beside it, served on loopback. */
async function serve(outDir) {
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  await build({
    configFile: "tests/bench/vite.config.ts",
    logLevel: "warn",
    build: { outDir: join(outDir, "bench") },
  });
  const port = Number(process.env.PORT ?? 4398);
  const server = await preview({ logLevel: "warn", build: { outDir }, preview: { port, open: false } });
  return { server, url: `http://127.0.0.1:${port}` };
}

const shown = ({ gate, what, figure, limit, met, more }) =>
  `${gate.padEnd(5)} ${what.padEnd(64)} ${figure.padStart(10)} ${limit.padStart(10)}  ${met === null ? "" : met ? "met" : "MISSED"}${more ? `  (${more})` : ""}`;

/** Runs the gates that were asked for, all by default; a gate that breaks is a gate missed. */
async function run(browser, url, asked) {
  const results = [];
  for (const { names, measure } of gates) {
    if (asked.length > 0 && !names.some((name) => asked.includes(name))) continue;
    const context = await browser.newContext({
      baseURL: url,
      locale: "en-IE",
      viewport: { width: 1440, height: 900 },
    });
    const found = await measure(context).catch((error) => [
      { gate: names[0], what: `broke: ${error.message.split("\n")[0]}`, figure: "–", limit: "–", met: false },
    ]);
    for (const result of found) console.log(shown(result));
    results.push(...found);
    await context.close();
  }
  return results;
}

const site = mkdtempSync(join(tmpdir(), "understudy-bench-"));
const { server, url } = await serve(site);
const browser = await chromium.launch({ executablePath: await findChromium(), args });
try {
  const [cpu] = cpus();
  console.log(
    `${cpu?.model ?? "?"}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, ${process.platform}`,
  );
  console.log(
    `Node ${process.versions.node}, Chromium ${browser.version()}; medians, each beside its peer in this run\n`,
  );
  console.log(shown({ gate: "gate", what: "what", figure: "figure", limit: "limit", met: null }));
  const results = await run(browser, url, process.argv.slice(2));
  const missed = results.filter(({ met }) => met === false).length;
  console.log(`\n${results.filter(({ met }) => met).length} met, ${missed} missed`);
  process.exitCode = missed === 0 ? 0 : 1;
} finally {
  await browser.close();
  await new Promise((resolve) => server.httpServer.close(resolve));
  rmSync(site, { recursive: true, force: true });
}
process.exit(); // the server's kept connections would hold it up
