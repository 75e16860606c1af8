import { fileURLToPath } from "node:url";
import { defineConfig } from "@playwright/test";

const root = fileURLToPath(new URL("../..", import.meta.url));
const executablePath = process.env.CHROMIUM_PATH ?? "/usr/bin/chromium";

export default defineConfig({
  testDir: ".",
  testMatch: "**/*.e2e.ts",
  outputDir: `${root}/test-results`,
  fullyParallel: true,
  workers: 3, // two cores are idle for two fifths of the time with two: tests wait for frames, disks and timers
  forbidOnly: Boolean(process.env.CI),
  reporter: [["list"]],
  timeout: 60_000,
  use: {
    baseURL: "http://127.0.0.1:4399",
    locale: "en-IE",
    timezoneId: "Europe/Stockholm",
    browserName: "chromium",
    launchOptions: {
      executablePath,
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
  webServer: {
    command: "npx --no-install vite preview --port 4399",
    cwd: root,
    url: "http://127.0.0.1:4399/",
    reuseExistingServer: !process.env.CI,
  },
});
