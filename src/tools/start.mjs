// Builds the app and serves it at one fixed local address until it is stopped.
import { build, preview } from "vite";

const mayOpen =
  process.stdout.isTTY &&
  !process.env.CI &&
  (process.platform !== "linux" || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY));
const port = Number(process.env.PORT ?? 4317);

await build({ logLevel: "warn" });
try {
  const server = await preview({ logLevel: "warn", preview: { port, open: mayOpen } });
  console.log(`Ready: ${server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${port}/`}`);
  console.log("Your data stays in this browser. Stop with Ctrl+C.");
} catch (error) {
  console.error(`Port ${port} cannot be used (${error instanceof Error ? error.message : error}).`);
  console.error("Is Understudy already running? Otherwise choose another port: PORT=4318 npm start");
  process.exit(1);
}

// A killed npm does not pass the signal on: leave with the parent.
const parent = process.ppid;
setInterval(() => process.ppid !== parent && process.exit(0), 1000);
