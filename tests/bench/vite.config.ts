import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

/** The page that times the store's and the engine's own code, built beside the app it measures. */
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "/bench/",
  build: { target: "es2022", emptyOutDir: true, modulePreload: { polyfill: false } },
});
