// The command line: builds itself when the sources are newer than the build, silently, then runs.
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const built = join(root, "dist-cli", "cli.mjs");
const stampFile = join(root, "dist-cli", "built-from");

const filesIn = (folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

function stampOfSources() {
  const hash = createHash("sha256");
  const files = [
    ...filesIn("src/engine"),
    ...filesIn("src/cli"),
    join(root, "package-lock.json"),
    join(root, "vite.config.ts"),
  ];
  for (const file of files) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return hash.digest("hex");
}

/** Built beside and moved into place, so that two commands started at once never see half a file. */
async function buildInto(stamp) {
  const { build } = await import("vite");
  const beside = mkdtempSync(join(root, ".cli-build-"));
  try {
    await build({
      root: join(root, "src"),
      configFile: join(root, "vite.config.ts"),
      mode: "cli",
      logLevel: "silent",
      build: { outDir: beside, emptyOutDir: true },
    });
    mkdirSync(join(root, "dist-cli"), { recursive: true });
    renameSync(join(beside, "cli.mjs"), built);
    writeFileSync(stampFile, stamp);
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

const stamp = stampOfSources();
const isFresh = existsSync(built) && existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp;
if (!isFresh) await buildInto(stamp);
await import(pathToFileURL(built).href);
