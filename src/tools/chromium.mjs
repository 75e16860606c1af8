// Finds a Chromium for the browser tests, or installs one. Prints nothing when it finds one.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";

const usual = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

const succeeds = (command, args) =>
  spawnSync(command, args, { stdio: ["ignore", "ignore", "inherit"] }).status === 0;

const isDebianRoot = () => {
  const isRoot = process.getuid?.() === 0;
  return isRoot && existsSync("/etc/os-release") && /debian/i.test(readFileSync("/etc/os-release", "utf8"));
};

/** The path of a Chromium. @throws with what to do when there is none and none can be installed */
export async function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) {
    if (existsSync(asked)) return asked;
    throw new Error(`CHROMIUM_PATH names ${asked}, which is not there.`);
  }
  const { chromium } = await import("playwright-core");
  const bundled = chromium.executablePath();
  if (existsSync(bundled)) return bundled;
  const found = usual.find((path) => existsSync(path));
  if (found) return found;
  console.log("No Chromium here yet: installing one for the browser tests…");
  if (succeeds("npx", ["--no-install", "playwright", "install", "chromium"]) && existsSync(bundled))
    return bundled;
  if (
    isDebianRoot() &&
    succeeds("apt-get", ["update", "-qq"]) &&
    succeeds("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]) &&
    existsSync("/usr/bin/chromium")
  ) {
    return "/usr/bin/chromium";
  }
  throw new Error(
    "No Chromium was found or could be installed. Install one and name it: CHROMIUM_PATH=/path npm test",
  );
}
