// Installs what the lockfile says, once per lockfile, platform and Node version. Imports nothing installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const stampFile = `${root}node_modules/.installed-from`;
const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);

if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Understudy needs Node.js 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

const stamp = createHash("sha256")
  .update(readFileSync(`${root}package-lock.json`))
  .update(`${process.platform} ${process.arch} ${major}`)
  .digest("hex");

if (!existsSync(stampFile) || readFileSync(stampFile, "utf8") !== stamp) {
  console.log("Installing what Understudy is built with…");
  const { status } = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    shell: process.platform === "win32",
  });
  if (status !== 0) {
    console.error("npm ci did not succeed: the lines above say why. Is the network there?");
    process.exit(status ?? 1);
  }
  writeFileSync(stampFile, stamp);
}
