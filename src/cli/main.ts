import { readFileSync, statSync } from "node:fs";
import type { Io } from "./io.ts";
import { run } from "./run.ts";

const read: Io["read"] = (path) => {
  const file = statSync(path);
  if (file.isDirectory()) throw new Error("a folder");
  return {
    bytes: file.size,
    text: () => new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)),
  };
};

// A reader that stops early (`| head`) is no error of ours.
process.stdout.on("error", () => process.exit());

process.exitCode = run(process.argv.slice(2), {
  read,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  today: new Date().toISOString().slice(0, 10),
});
