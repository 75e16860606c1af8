/** Fills the app's own database with so many things, through the app's own store. */
export async function fill(context, count, palette = "uniform") {
  const page = await context.newPage();
  await page.goto("/bench/index.html");
  await page.waitForFunction(() => globalThis.bench);
  await page.evaluate(
    ([many, colours]) => globalThis.bench.fill("understudy", many, colours),
    [count, palette],
  );
  await page.close();
}

/** Loads an address, and waits until its page stands. */
export async function open(page, address) {
  await page.goto(address);
  await page.locator("h1:visible").waitFor();
}
