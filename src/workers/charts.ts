import { expose, transfer } from "comlink";
import { createChartSession } from "./chart/session.ts";

// Runs off the page's thread: twelve million pixels are unpacked and read here, and gone when the thread ends.
const session = createChartSession();

expose({
  ...session,
  async open(file: Blob) {
    const opened = await session.open(file);
    return opened.ok ? transfer(opened, [opened.view]) : opened;
  },
});
