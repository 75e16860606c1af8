import { describe, expect, it } from "vitest";
import { calendarNames } from "../../../src/ui/parts/read/calendar-names.ts";
import { readDate, readMonth } from "../../../src/ui/parts/read/date.ts";
import { formatter } from "../../../src/ui/words/format.ts";

// Ways of writing dates: common practice, no source; results are ISO 8601.
const spoken = ["en", "sv", "en-GB", "de"];
const names = calendarNames(spoken);

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
    ["den 3 maj 2026", "2026-05-03"],
    ["3 maj 2026", "2026-05-03"],
    ["3:e maj 2026", "2026-05-03"],
    ["söndagen den 3 maj 2026", "2026-05-03"],
    ["Sunday, 3 May 2026", "2026-05-03"],
    ["3. Mai 2026", "2026-05-03"],
    ["So., 3. Mai 2026", "2026-05-03"],
    ["1. März 2026", "2026-03-01"],
    ["1. Dez. 2026", "2026-12-01"],
    ["6 okt 2026", "2026-10-06"],
    ["6 Sept 2026", "2026-09-06"],
    ["6 Sep 2026", "2026-09-06"],
    ["2026年5月3日", "2026-05-03"],
    ["２０２６年５月３日", "2026-05-03"],
    ["2026. 5. 3.", "2026-05-03"],
    ["23/5 2026", "2026-05-23"],
    ["3.5.2026", "2026-05-03"],
    ["2026 05 03", "2026-05-03"],
  ])("%s is %s", (written, value) => {
    expect(readDate(written, names)).toEqual({ kind: "value", value });
  });

  it("asks where either figure may be the day", () => {
    expect(readDate("3/4/2026", names)).toEqual({ kind: "ask", values: ["2026-04-03", "2026-03-04"] });
  });

  it.each(["3/5 2026", "3-5-2026", "3 5 2026"])("%s is asked about", (written) => {
    expect(readDate(written, names)).toEqual({ kind: "ask", values: ["2026-05-03", "2026-03-05"] });
  });

  it("takes a weekday only of its own day, and lets it settle which is meant", () => {
    expect(readDate("Monday 3 May 2026", names).kind).toBe("fault");
    expect(readDate("Sunday 3/5 2026", names)).toEqual({ kind: "value", value: "2026-05-03" });
    expect(readDate("Thursday 3/5 2026", names)).toEqual({ kind: "value", value: "2026-03-05" });
  });

  // Croatian has its listopad in October, Polish in November (CLDR).
  it("asks where two languages mean different months by one name", () => {
    const both = calendarNames(["en", "hr", "pl"]);
    expect(readDate("3 listopad 2026", both)).toEqual({ kind: "ask", values: ["2026-10-03", "2026-11-03"] });
    expect(readMonth("listopad 2026", both)).toEqual({ kind: "ask", values: ["2026-10", "2026-11"] });
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
    ["maj 2026", "2026-05"],
    ["Mai 2026", "2026-05"],
    ["2026年4月", "2026-04"],
    ["04.2026", "2026-04"],
  ])("%s is %s", (written, value) => {
    expect(readMonth(written, names)).toEqual({ kind: "value", value });
  });

  it.each(["13/2026", "April", "April 26", "2026", "some time"])("%s is a fault", (written) => {
    expect(readMonth(written, names).kind).toBe("fault");
  });
});

// Their own calendars and figures are not the workbook's: what is printed there keeps to those that it has.
it.each(["th-TH", "fa-IR", "ar-EG"])("printed in %s, a day and a month are read back", (locale) => {
  const print = formatter(locale);
  const known = calendarNames([...spoken, locale]);
  expect(readDate(print.date("2026-05-03"), known)).toEqual({ kind: "value", value: "2026-05-03" });
  expect(readMonth(print.month("2026-05"), known)).toEqual({ kind: "value", value: "2026-05" });
});

// Each month's name by hand (from memory), against what CLDR gives through Intl.
describe.each([
  ["sv", "januari februari mars april maj juni juli augusti september oktober november december"],
  ["de", "Januar Februar März April Mai Juni Juli August September Oktober November Dezember"],
  ["en", "January February March April May June July August September October November December"],
])("months in %s", (_, list) => {
  it.each(list.split(" ").map((name, index) => ({ name, month: String(index + 1).padStart(2, "0") })))(
    "$name is $month",
    ({ name, month }) => {
      expect(readMonth(`${name} 2026`, names)).toEqual({ kind: "value", value: `2026-${month}` });
    },
  );
});

// Quality bar U14, for dates: what is printed for a locale is read back where that locale's names are known.
describe.each(["en-GB", "en-US", "sv-SE", "de-DE", "ja-JP", "fr-FR", "pl-PL", "pt-BR"])(
  "printed in %s",
  (locale) => {
    const print = formatter(locale);
    const known = calendarNames([...spoken, locale]);

    it("each day of the months' ends is read back, short and long", () => {
      for (let month = 1; month <= 12; month += 1)
        for (const day of ["01", "03", "12", "28"]) {
          const iso = `2026-${String(month).padStart(2, "0")}-${day}`;
          expect(readDate(print.date(iso), known), print.date(iso)).toEqual({ kind: "value", value: iso });
          expect(readDate(print.longDate(iso), known), print.longDate(iso)).toEqual({
            kind: "value",
            value: iso,
          });
        }
    });

    it("each month is read back", () => {
      for (let month = 1; month <= 12; month += 1) {
        const iso = `2026-${String(month).padStart(2, "0")}`;
        expect(readMonth(print.month(iso), known), print.month(iso)).toEqual({ kind: "value", value: iso });
      }
    });
  },
);
