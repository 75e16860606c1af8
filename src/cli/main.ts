import { readFileSync, statSync } from "node:fs";
import { run } from "./run.ts";

// A reader that stops early (`| head`) is no error of ours.
process.stdout.on("error", () => process.exit());

process.exitCode = run(process.argv.slice(2), {
  read: (path) => ({
    bytes: statSync(path).size,
    text: () => new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)),
  }),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  today: new Date().toISOString().slice(0, 10),
});
