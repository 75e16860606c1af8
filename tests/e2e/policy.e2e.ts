import { test as bare } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { fewOf, open, placesOf, plainPlaces, step } from "./places.ts";
import { type Probed, probe } from "./policy/probe.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Source: quality bar X1, without 'wasm-unsafe-eval', as nothing here is WebAssembly.
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; " +
  "connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; " +
  "require-trusted-types-for 'script'; trusted-types app";

test("every page carries the policy, as a header and in itself", async ({ page, request }) => {
  for (const address of ["/", "/kits/sp-2026-04/worth", "/nowhere/at/all"]) {
    const headers = (await request.get(address)).headers();
    expect(headers["content-security-policy"]).toBe(`${policy}; frame-ancestors 'none'`);
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["referrer-policy"]).toBe("no-referrer");
    await open(page, address);
    const inPage = page.locator('meta[http-equiv="Content-Security-Policy"]');
    await expect(inPage).toHaveAttribute("content", policy);
    // A policy in the page counts only for what comes after it.
    expect(await inPage.evaluate((meta) => meta === document.head.firstElementChild)).toBe(true);
  }
});

test("no place sends a request to anywhere else, and each asks for the app itself", async ({ page }) => {
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).origin));
  await open(page, "/");
  for (const address of placesOf(fewOf(sampleBook()))) await step(page, address);
  expect(new Set(asked).size).toBe(1);
  expect(asked.length).toBeGreaterThan(plainPlaces.length);
});

atFirst("nor does a first visit, nor loading the sample", async ({ page }) => {
  await open(page, "/");
  for (const address of [...plainPlaces, "/"]) await step(page, address);
  await page.getByRole("button", { name: "Try the sample" }).click();
  await expect(page.getByText("This is the sample")).toBeVisible();
});

const stopped: Probed = {
  ran: ["script from here"],
  told: [
    ...["base-uri", "connect-src", "form-action", "frame-src", "require-trusted-types-for"],
    ...["script-src-attr", "script-src-elem", "style-src-attr", "style-src-elem", "trusted-types"],
  ],
  styled: [],
  left: [],
};

const sorted = (words: readonly string[]) => [...new Set(words)].toSorted();

for (const carrier of ["the header", "the page itself"] as const)
  bare(`what is not ours is stopped by the policy in ${carrier}`, async ({ page, request }) => {
    const served = await request.get("/");
    const [meta = ""] = /<meta http-equiv="Content-Security-Policy"[^>]*>/.exec(await served.text()) ?? [];
    const header = served.headers()["content-security-policy"] ?? "";
    const probed =
      carrier === "the header"
        ? await probe(page, "", { "content-security-policy": header })
        : await probe(page, meta, {});
    expect({ ...probed, told: sorted(probed.told) }).toEqual(stopped);
  });

bare("the same page gets its way where there is no policy, so the probe is a real one", async ({ page }) => {
  const { ran, told, styled, left } = await probe(page, "", {});
  expect(sorted(ran)).toEqual([
    ...["Function", "address of script", "another policy", "eval", "fetch", "frame", "handler in markup"],
    ...["inline script", "innerHTML", "script from data", "script from elsewhere", "script from here"],
    ...["script text", "timer of text", "worker from a blob"],
  ]);
  expect(told).toEqual([]);
  expect(styled).toEqual(["attribute", "tag"]);
  expect(sorted(left)).toEqual(["/missing.png", "/script.js", "/sent", "/told"]);
});

bare("no other page can frame the app", async ({ page, baseURL }) => {
  await page.route("https://elsewhere.test/", (route) =>
    route.fulfill({ contentType: "text/html", body: `<iframe src="${baseURL}/"></iframe>` }),
  );
  await page.goto("https://elsewhere.test/");
  const [, framed] = page.frames();
  expect(framed?.url()).toMatch(/^chrome-error:/);
});
