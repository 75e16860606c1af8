import type { Page } from "@playwright/test";

/** Ways to run, load, draw or send something that is not ours, in markup. */
const inMarkup = `
  <base href="https://elsewhere.test/">
  <script>ran.push("inline script")</script>
  <script src="data:text/javascript,ran.push('script from data')"></script>
  <script src="https://elsewhere.test/script.js"></script>
  <img src="missing.png" onerror="ran.push('handler in markup')">
  <iframe srcdoc="<script>parent.ran.push('frame')</script>"></iframe>
  <a id="link" href="javascript:void ran.push('address of script')">link</a>
  <p id="attribute" style="position: fixed">styled</p>
  <style>#tag { position: fixed }</style><p id="tag">styled</p>
  <iframe name="sink"></iframe>
  <form id="form" action="/sent" target="sink"><input name="word" value="secret"></form>`;

/** The same from a script that the policy lets run, being served from here. */
const fromScript = `
  globalThis.ran = ["script from here"];
  globalThis.told = [];
  document.addEventListener("securitypolicyviolation", (event) => told.push(event.effectiveDirective));
  const attempt = (name, work) => {
    try {
      work();
      ran.push(name);
    } catch {
      // the policy threw: that is what it is for
    }
  };
  attempt("eval", () => eval("1"));
  attempt("Function", () => new Function("return 1")());
  attempt("innerHTML", () => { document.createElement("p").innerHTML = "<b>bold</b>"; });
  attempt("script text", () => { document.createElement("script").textContent = "1"; });
  attempt("another policy", () => trustedTypes.createPolicy("another", {}));
  attempt("timer of text", () => setTimeout("1"));
  addEventListener("load", async () => {
    document.getElementById("link").click();
    document.getElementById("form").requestSubmit();
    await fetch("https://elsewhere.test/told").then(() => ran.push("fetch"), () => {});
    const blob = new Blob(["postMessage(1)"], { type: "text/javascript" });
    attempt("worker from a blob", () => new Worker(URL.createObjectURL(blob)));
    setTimeout(() => { document.title = "probed"; }, 200);
  });`;

declare const ran: readonly string[];
declare const told: readonly string[];

/** What came of a probe. */
export type Probed = Readonly<{
  /** What ran, of all that the page tried. */
  ran: readonly string[];
  /** The directives that were violated. */
  told: readonly string[];
  /** Which of the two ways of styling in markup took effect. */
  styled: readonly string[];
  /** Addresses of elsewhere that a request really went to. */
  left: readonly string[];
}>;

const styledIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    ["attribute", "tag"].filter((id) => {
      const element = document.getElementById(id);
      return element !== null && getComputedStyle(element).position === "fixed";
    }),
  );

/**
 * Has the site serve a page that tries everything, and looks what came of it. The page is served, not built by
 * the test in an open one: what a test evaluates is exempt from the policy.
 * @param head what of the page's head carries a policy
 */
export async function probe(page: Page, head: string, headers: Record<string, string>): Promise<Probed> {
  const left: string[] = [];
  await page.route("https://elsewhere.test/**", (route) => {
    left.push(new URL(route.request().url()).pathname);
    return route.fulfill({
      body: "ran.push('script from elsewhere')",
      contentType: "text/javascript",
      headers: { "access-control-allow-origin": "*" },
    });
  });
  await page.route("/probe.js", (route) =>
    route.fulfill({ body: fromScript, contentType: "text/javascript" }),
  );
  await page.route("/probe", (route) =>
    route.fulfill({
      headers: { ...headers, "content-type": "text/html" },
      body: `<!doctype html><head>${head}<script src="/probe.js"></script></head><body>${inMarkup}</body>`,
    }),
  );
  await page.goto("/probe");
  await page.waitForFunction(() => document.title === "probed");
  const { ran: all, told: violated } = await page.evaluate(() => ({ ran, told }));
  return { ran: all, told: violated, styled: await styledIn(page), left };
}
