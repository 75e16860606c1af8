// Runs every check, goes on after a failure, and ends with one plain line: "N passed, N failed".
import { spawnSync } from "node:child_process";
import { findChromium } from "./chromium.mjs";

const npx = (...args) => ["npx", ["--no-install", ...args]];

const steps = [
  ["types", ...npx("tsc", "--noEmit")],
  ["engine without the DOM", ...npx("tsc", "--noEmit", "-p", "src/engine")],
  ["unit, reference and property tests", ...npx("vitest", "run")],
  ["build", ...npx("vite", "build", "--logLevel", "warn")],
  ["command line", "node", ["src/tools/understudy.mjs", "check", "fixtures/sample.understudy.json"]],
  ["browser tests", ...npx("playwright", "test", "-c", "tests/e2e/playwright.config.ts")],
];

let chromium;
try {
  chromium = await findChromium();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
}

const env = { ...process.env, ...(chromium ? { CHROMIUM_PATH: chromium } : {}) };
delete env.FORCE_COLOR;

const results = steps.map(([name, command, args]) => {
  console.log(`\n— ${name}`);
  const began = performance.now();
  const needsBrowser = name === "browser tests";
  const status =
    needsBrowser && !chromium
      ? 1
      : spawnSync(command, args, {
          stdio: ["ignore", "inherit", "inherit"],
          env,
          shell: process.platform === "win32",
        }).status;
  return { name, passed: status === 0, seconds: ((performance.now() - began) / 1000).toFixed(1) };
});

console.log("");
for (const { name, passed, seconds } of results) {
  console.log(`${passed ? "passed" : "FAILED"}  ${seconds.padStart(6)} s  ${name}`);
}
const failed = results.filter((result) => !result.passed).length;
console.log(`${results.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
