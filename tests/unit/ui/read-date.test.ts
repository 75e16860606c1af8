import { describe, expect, it } from "vitest";
import { monthNames, readDate, readMonth } from "../../../src/ui/parts/read/date.ts";

// Ways of writing dates: common practice, no source; results are ISO 8601.
const names = monthNames(["en", "sv"]);

describe("a day", () => {
  it.each([
    ["2026-04-30", "2026-04-30"],
    ["2026/4/3", "2026-04-03"],
    ["30 April 2026", "2026-04-30"],
    ["30th of April, 2026", "2026-04-30"],
    ["Apr 30, 2026", "2026-04-30"],
    ["2026年4月30日", "2026-04-30"],
    ["30 maj 2026", "2026-05-30"],
    ["2026 May 7", "2026-05-07"],
    ["30.4.2026", "2026-04-30"],
    ["03.04.2026", "2026-04-03"],
    ["30/4/2026", "2026-04-30"],
    ["4/30/2026", "2026-04-30"],
    ["5/5/2026", "2026-05-05"],
    ["29 Feb 2028", "2028-02-29"],
  ])("%s is %s", (written, value) => {
    expect(readDate(written, names)).toEqual({ kind: "value", value });
  });

  it("asks where either figure may be the day", () => {
    expect(readDate("3/4/2026", names)).toEqual({ kind: "ask", values: ["2026-04-03", "2026-03-04"] });
  });

  it.each(["30 April", "30/4/26", "31 April 2026", "29 Feb 2026", "soon", "1 2 3 4", "April"])(
    "%s is a fault",
    (written) => {
      expect(readDate(written, names).kind).toBe("fault");
    },
  );

  it("takes nothing for nothing", () => {
    expect(readDate(" ", names)).toEqual({ kind: "empty" });
  });
});

describe("a month", () => {
  it.each([
    ["2026-04", "2026-04"],
    ["April 2026", "2026-04"],
    ["4/2026", "2026-04"],
    ["2026 apr.", "2026-04"],
  ])("%s is %s", (written, value) => {
    expect(readMonth(written, names)).toEqual({ kind: "value", value });
  });

  it.each(["13/2026", "April", "April 26", "2026", "some time"])("%s is a fault", (written) => {
    expect(readMonth(written, names).kind).toBe("fault");
  });
});
