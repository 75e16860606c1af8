// What loads before the first useful page, and what each screen adds to it, by vite's manifest.
import { readFileSync } from "node:fs";

const manifest = JSON.parse(readFileSync("dist/.vite/manifest.json", "utf8"));

const closure = (keys, seen = new Set()) => {
  for (const key of keys) {
    if (seen.has(key)) continue;
    seen.add(key);
    closure(manifest[key].imports ?? [], seen);
  }
  return seen;
};

const filesOf = (...keys) => [...closure(keys)].map((key) => `dist/${manifest[key].file}`);
// One language's words are waited for too; English stands for either.
const firstWords = ["frame", "terms", "done", "acts", "desk"].map((name) => `ui/words/en/${name}.ts`);
const first = filesOf("index.html", "ui/desk/desk-screen.tsx", ...firstWords);
const screens = Object.keys(manifest).filter(
  (key) => manifest[key].isDynamicEntry && !first.includes(`dist/${manifest[key].file}`),
);

export default [
  { name: "first visit", path: first, limit: "160 kB", gzip: true },
  ...screens.map((key) => ({
    name: key,
    path: filesOf(key).filter((file) => !first.includes(file)),
    limit: "110 kB",
    gzip: true,
  })),
];
