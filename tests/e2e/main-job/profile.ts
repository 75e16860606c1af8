import type { BrowserContext, Page, PlaywrightTestOptions, PlaywrightWorkerOptions } from "@playwright/test";
import { chromium } from "@playwright/test";

import { type Watch, watch } from "../watched.ts";

/** The day on which it all happens, so that the figures and texts are the same on any other. */
export const day = new Date("2026-05-02T10:00:00+02:00");

export type Sitting = Readonly<{ page: Page; context: BrowserContext; watch: Watch }>;

/** The options of playwright.config.ts, as its own contexts get them. */
export type Options = Readonly<
  Pick<PlaywrightTestOptions & PlaywrightWorkerOptions, "launchOptions" | "baseURL" | "locale" | "timezoneId">
>;

/** Opens the browser on a profile kept on disk: what a person finds who closed it yesterday. */
export async function sitDown(profile: string, options: Options): Promise<Sitting> {
  const { launchOptions, baseURL = "", locale, timezoneId } = options;
  const context = await chromium.launchPersistentContext(profile, {
    ...launchOptions,
    baseURL,
    ...(locale ? { locale } : {}),
    ...(timezoneId ? { timezoneId } : {}),
    viewport: { width: 1440, height: 1000 },
    permissions: ["clipboard-read", "clipboard-write"],
  });
  const watched = await watch(context, baseURL);
  await context.clock.setFixedTime(day);
  return { page: context.pages()[0] ?? (await context.newPage()), context, watch: watched };
}
