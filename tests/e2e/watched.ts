import { type BrowserContext, test as base, expect } from "@playwright/test";

/** What went wrong so far on the pages of a context; empty while nothing did. */
export type Watch = readonly string[];

/**
 * Watches every page of a context for violations of the content policy, requests that leave the origin, errors
 * nobody caught, and writing to the disk that does not wait for the disk.
 */
export async function watch(context: BrowserContext, baseURL: string): Promise<Watch> {
  const wrong: string[] = [];
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      console.error(
        `policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      );
    });
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...args) {
      const opened = transaction.apply(this, args);
      const { mode, durability } = opened;
      if (mode === "readwrite" && durability !== "strict")
        console.error(`a ${durability} transaction writes`);
      return opened;
    };
  });
  context.on("request", (request) => {
    const url = new URL(request.url());
    if (url.protocol !== "blob:" && url.origin !== new URL(baseURL).origin)
      wrong.push(`request to ${url.href}`);
  });
  context.on("weberror", (error) => wrong.push(`uncaught: ${error.error().message}`));
  context.on("console", (message) => {
    if (message.type() === "error") wrong.push(`console: ${message.text()}`);
  });
  return wrong;
}

/**
 * A test whose page is watched: a violation of the content policy, a request that leaves the origin, an error
 * nobody caught, or a transaction that is not strict fails it (quality bar X1, X2, D1).
 */
export const test = base.extend<{ watched: undefined }>({
  watched: [
    async ({ context, baseURL }, use) => {
      const wrong = await watch(context, baseURL ?? "");
      await use(undefined);
      expect(wrong).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
