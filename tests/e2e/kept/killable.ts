import { spawn } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { chromium, type Page } from "@playwright/test";

/** A browser over a profile on disk, which can be killed as by a crash or a power button. */
export type Killable = Readonly<{ page: Page; kill: () => Promise<void> }>;

/** Where a browser says on which port it can be driven. */
const portFile = "DevToolsActivePort";

async function portOf(profile: string): Promise<string> {
  for (let tries = 0; tries < 300; tries += 1) {
    const text = await readFile(join(profile, portFile), "utf8").catch(() => "");
    const [port] = text.split("\n");
    if (port) return port;
    await wait(100);
  }
  throw new Error("the browser did not start within 30 s");
}

/**
 * Starts a browser on `profile`. It is started here and not by Playwright, which does not say which process it
 * is, and closes a browser in good order.
 */
export async function launchKillable(
  profile: string,
  { executablePath = "", args = [] }: Readonly<{ executablePath?: string; args?: string[] }>,
): Promise<Killable> {
  await rm(join(profile, portFile), { force: true });
  const child = spawn(
    executablePath,
    [...args, "--headless", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"],
    { detached: true, stdio: "ignore" },
  );
  const gone = new Promise<void>((give) => child.once("exit", () => give()));
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(profile)}`);
  const [context] = browser.contexts();
  if (!context) throw new Error("the browser has no window");
  return {
    page: context.pages()[0] ?? (await context.newPage()),
    kill: async () => {
      const { pid } = child;
      // The whole group: the browser's helpers die in the same moment, none finishes the work.
      if (pid !== undefined) process.kill(-pid, "SIGKILL");
      await gone;
      await browser.close().catch(() => {}); // only the connection, which is dead already
    },
  };
}
