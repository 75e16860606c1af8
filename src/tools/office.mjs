// Has LibreOffice open the lists that the app saves (npm run office): numbers must be numbers, days days, nothing a
// formula, every text the same; and what LibreOffice saves of them must come back in unchanged. By hand only: it needs
// `soffice` on the path (or SOFFICE), which no other command does.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { createServer } from "vite";
import { cellsOfFlat } from "./office-cells.mjs";

// A server that nobody is served by: the reader of spreadsheets is loaded late, and a runner would be closed by then.
const server = await createServer({
  configFile: false,
  appType: "custom",
  logLevel: "error",
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true },
});
const files = await server.ssrLoadModule("/src/workers/out/list-file.ts");
const intake = await server.ssrLoadModule("/src/engine/intake/index.ts");
const reader = await server.ssrLoadModule("/src/workers/session.ts");

const stash = [
  ...JSON.parse(readFileSync("fixtures/lists/odd-stash.json", "utf8")),
  ...JSON.parse(readFileSync("fixtures/sample.understudy.json", "utf8")).stash,
];
const folder = mkdtempSync(join(tmpdir(), "understudy-office-"));
const profile = pathToFileURL(join(folder, "profile")).href;
// Commas, double quotes, UTF-8, from the first line on; numbers and days in plain form are taken as such.
const asCsv = "--infilter=CSV:44,34,76,1,,0,false,true,false";

function convert(from, to) {
  const more = from.endsWith(".csv") ? [asCsv] : [];
  const args = [
    `-env:UserInstallation=${profile}`,
    "--headless",
    ...more,
    "--convert-to",
    to,
    "--outdir",
    folder,
  ];
  const { status, error } = spawnSync(process.env.SOFFICE ?? "soffice", [...args, from], {
    encoding: "utf8",
  });
  if (error || status !== 0) throw error ?? new Error(`soffice could not turn ${from} into ${to}`);
}

/** In CSV the mark before what looks like a formula can be seen, and what looks like a number is one. */
const asSeen = (kind, text) =>
  kind === "csv" && /^'*[=+\-@]/.test(text) && !/^-\d+$/.test(text) ? `'${text}` : text;
const bare = (text) => (/^'+[=+\-@]/.test(text) ? `'${text}` : text);

function wanted(cell, kind) {
  if (cell === null) return { type: "none", text: "" };
  if (typeof cell === "object" && "date" in cell) return { type: "date", text: cell.date };
  if (typeof cell === "object") return { type: "float", text: String(Number(cell.number)) };
  if (kind === "csv" && /^-?\d+(\.\d+)?$/.test(cell)) return { type: "float", text: String(Number(cell)) };
  if (kind === "csv" && /^\d{4}-\d\d-\d\d$/.test(cell)) return { type: "date", text: cell };
  return { type: "string", text: kind === "csv" ? asSeen(kind, cell) : bare(cell) };
}

function differences(kind, found, { heads, rows }) {
  const faults = [];
  const all = [heads, ...rows];
  for (const [down, row] of all.entries())
    for (const [across, cell] of row.entries()) {
      const want = wanted(cell, kind);
      const got = found[down]?.[across] ?? { type: "none", text: "", formula: false };
      const same = got.text === want.text || (want.type === "float" && want.text.length > 15); // more than it keeps
      if (got.formula || got.type !== want.type || !same)
        faults.push(
          `${kind} row ${down + 1}, ${heads[across]}: ${JSON.stringify(got)} for ${JSON.stringify(want)}`,
        );
    }
  return faults;
}

/** What comes of a file that LibreOffice saved, against what went out. */
async function comesBack(path, language) {
  const session = reader.createSession();
  await session.openFile(new Uint8Array(readFileSync(path)), "list");
  session.guess(0, "SEK", language);
  const kits = [...new Set(stash.flatMap(({ fromKit }) => fromKit ?? []))];
  session.readItems({ stash: [], kits, known: {}, today: "2026-05-01", language });
  const back = session.drafts([]).map(intake.saidBy);
  return stash.flatMap((item, at) => {
    const { safety: _, ...held } = item; // some of the sample's things say it where no column is
    return intake.saidBy(held) === back[at]
      ? []
      : [`${path}: ${intake.saidBy(held)} came back as ${back[at]}`];
  });
}

let faults = [];
for (const language of ["en", "sv"])
  for (const kind of ["xlsx", "ods", "csv"]) {
    const name = `list-${language}`;
    const path = join(folder, `${name}.${kind}`);
    writeFileSync(path, await files.listFile(kind, stash, language, "Stash"));
    convert(path, "fods");
    const found = cellsOfFlat(readFileSync(join(folder, `${name}.fods`), "utf8"));
    const wrong = differences(kind, found, intake.ownList(stash, language));
    const typed = found.flat().filter(({ type }) => type === "float" || type === "date").length;
    faults = [...faults, ...wrong];
    if (kind !== "csv") {
      const other = kind === "xlsx" ? "ods" : "xlsx";
      convert(path, other);
      faults = [...faults, ...(await comesBack(join(folder, `${name}.${other}`), language))];
    }
    process.stdout.write(
      `${kind}, ${language}: ${found.length} rows, ${typed} numbers and days, ${wrong.length} faults\n`,
    );
  }
await server.close();
rmSync(folder, { recursive: true, force: true });
for (const fault of faults.slice(0, 20)) process.stdout.write(`${fault}\n`);
process.exitCode = faults.length > 0 ? 1 : 0;
