import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The one policy the app ships with (quality bar X1). `frame-ancestors` works as a header only. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types app",
];

const policyInPage = {
  name: "policy-in-page",
  apply: "build" as const,
  transformIndexHtml: () => [
    {
      tag: "meta",
      injectTo: "head-prepend" as const,
      attrs: { "http-equiv": "Content-Security-Policy", content: policy.join("; ") },
    },
  ],
};

/** The words that the first page waits for, one file a language. */
const firstWords = ["en", "sv"].map((language) => ({
  name: `words-${language}`,
  test: new RegExp(`(ui/words/${language}/(frame|terms|done|acts|desk|say)|store/words/${language})\\.ts$`),
}));

const headers = {
  "Content-Security-Policy": [...policy, "frame-ancestors 'none'"].join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

const tests = ["tests/{unit,reference,property}/**/*.test.{ts,tsx}"];

/** Tests that put something in the place of what the browser offers, or load modules anew. */
const worldly = [
  "tests/unit/ui/{faults,text-language}.test.ts",
  "tests/unit/store/{browser,failing,parts,photos,readings,words}.test.ts",
];

const app = defineConfig({
  root: at("src"),
  publicDir: at("public"),
  plugins: [react(), policyInPage],
  worker: { format: "es" },
  build: {
    outDir: at("dist"),
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    manifest: true,
    rolldownOptions: { output: { codeSplitting: { groups: firstWords } } },
    license: { fileName: "third-party-licences.md" },
  },
  preview: { host: "127.0.0.1", port: 4317, strictPort: true, headers },
  test: {
    root: at("."),
    environment: "node",
    // Nothing here is a timed test: a busy machine may take its time.
    testTimeout: 120_000,
    maxWorkers: "100%",
    // Most of the time went into loading the engine anew for every file: only files that change the world need that.
    projects: [
      { extends: true, test: { name: "together", include: tests, exclude: worldly, isolate: false } },
      { extends: true, test: { name: "alone", include: worldly } },
    ],
  },
});

const cli = defineConfig({
  root: at("src"),
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    ssr: "cli/main.ts",
    outDir: at("dist-cli"),
    emptyOutDir: true,
    target: "node20",
    rolldownOptions: { output: { entryFileNames: "cli.mjs" } },
  },
});

export default defineConfig(({ mode }) => (mode === "cli" ? cli : app));
