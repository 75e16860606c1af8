import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Io } from "../../../src/cli/io.ts";
import { run } from "../../../src/cli/run.ts";
import { samplePath } from "../sample.ts";

/** Runs a command on files in memory; the sample is always there as `sample`. */
function command(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  let [out, err] = ["", ""];
  const io: Io = {
    read: (path) => {
      const text = path === "sample" ? readFileSync(samplePath, "utf8") : files[path];
      if (text === undefined) throw new Error("ENOENT");
      return { bytes: new TextEncoder().encode(text).length, text: () => text };
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    today: "2026-05-07",
  };
  return { code: run(args, io), out, err };
}
const json = (args: readonly string[]) => JSON.parse(command([...args, "--json"]).out);

describe("difference", () => {
  // Source: culori 4 and the npm package colorjs.io on the same pair, under D65 (see tests/reference/colour).
  it("from hex", () =>
    expect(json(["difference", "#4269d0", "#a463f2"])).toEqual({ deltaE00: 18.4365, word: "different" }));
  // Source: Sharma, Wu & Dalal (2005), table 1, pair 1.
  it("from Lab", () => {
    expect(json(["difference", "lab(50 2.6772 -79.7751)", "lab(50 0 -82.7485)"])).toEqual({
      deltaE00: 2.0425,
      word: "close",
    });
  });
  it("in words", () =>
    expect(command(["difference", "#000", "#000"]).out).toBe("0.0000 apart: indistinguishable\n"));
  it("the word goes by the printed figure (pair 21 is 1.0000)", () => {
    expect(json(["difference", "lab(50 2.5 0)", "lab(50 3.1736 0.5854)"])).toEqual({
      deltaE00: 1,
      word: "only side by side",
    });
  });
});

describe("check", () => {
  it("counts", () => {
    expect(json(["check", "sample"])).toEqual({
      ok: true,
      counts: { stash: 145, kits: 10, lines: 73, remakes: 3 },
      notices: [],
    });
  });
  it("keeps a fault on its line and the terminal unsteered, whatever an id holds", () => {
    const home = { market: "a\nb\u001b[2J" };
    const bad = JSON.stringify({ format: "understudy-workbook", version: 1, home });
    expect(command(["check", "bad"], { bad }).err).toBe(
      'home.market: there is no market "a\\u000ab\\u001b[2J"; name a market of this workbook\n',
    );
  });
  it("lists every fault, one a line, exit 1", () => {
    const bad = '{"format":"understudy-workbook","version":1,"home":{"market":"xx"},"stash":[{"id":"a"}]}';
    const { code, out, err } = command(["check", "bad"], { bad });
    expect([code, out]).toEqual([1, ""]);
    expect(err.trim().split("\n").toSorted()).toEqual([
      'home.market: there is no market "xx"; name a market of this workbook',
      "stash[0].supply: missing; give a record in { }",
    ]);
  });
  it("with --json the faults are the one document on standard output", () => {
    const { code, out, err } = command(["check", "bad", "--json"], { bad: "nonsense" });
    expect([code, err]).toEqual([1, ""]);
    expect(JSON.parse(out).faults).toMatchObject([{ place: "file" }]);
  });
  it("a file that is not there is at fault", () => {
    expect(command(["check", "nowhere"])).toMatchObject({
      code: 1,
      err: 'file: "nowhere" cannot be read; check the path\n',
    });
  });
});

describe("match", () => {
  const answer = json(["match", "sample", "--remake", "rm-low-light", "--palette"]);
  it("has exactly the fields of the contract, in its order", () => {
    expect(Object.keys(answer)).toEqual(["kit", "totalLikeness", "lines", "palette"]);
    expect(Object.keys(answer.lines[0])).toEqual(["line", "pick", "candidates"]);
    expect(Object.keys(answer.lines[0].pick)).toEqual([
      "stash",
      "likeness",
      "certainty",
      "deltaE00",
      "verdict",
      "adaptation",
      "by",
    ]);
    expect(Object.keys(answer.lines[0].candidates[0])).toEqual([
      "stash",
      "likeness",
      "certainty",
      "deltaE00",
      "verdict",
      "leftOut",
      "trace",
    ]);
    expect(Object.keys(answer.lines[0].candidates[0].trace[0])).toEqual([
      "trait",
      "kit",
      "stash",
      "similarity",
      "weight",
    ]);
    expect(Object.keys(answer.palette)).toEqual(["picks", "cost", "costOfFirst"]);
  });
  it("totals what it picks, and the palette is never worse than the first", () => {
    const sum = answer.lines.reduce(
      (total: number, { pick }: { pick: { likeness: number } | null }) => total + (pick?.likeness ?? 0),
      0,
    );
    expect(answer.totalLikeness).toBeCloseTo(sum, 4);
    expect(answer.palette.cost).toBeLessThanOrEqual(answer.palette.costOfFirst);
  });
  it("shows five candidates unless asked, and all for 0", () => {
    expect(answer.lines[0].candidates).toHaveLength(5);
    expect(
      json(["match", "sample", "--kit", "sp-2026-04", "--limit", "0"]).lines[0].candidates.length,
    ).toBeGreaterThan(40);
    expect(json(["match", "sample", "--kit", "sp-2026-04", "--limit", "2"]).lines[0].candidates).toHaveLength(
      2,
    );
  });
  it("has no palette unless asked", () =>
    expect(json(["match", "sample", "--kit", "sp-2026-04"]).palette).toBeNull());
});

describe("worth and prices", () => {
  it("worth has exactly the fields of the contract, in its order", () => {
    const answer = json(["worth", "sample", "--kit", "sp-2026-04"]);
    expect(Object.keys(answer)).toEqual(["kit", "valuedOn", "ratesOf", "staleRates", "markets"]);
    expect(answer.markets.map(({ market }: { market: string }) => market)).toEqual(["se", "ie", "jp"]);
    expect(Object.keys(answer.markets[0])).toEqual(
      "market currency lines listTotal listLow listHigh streetTotal streetLow streetHigh wantedTotal unpriced tiers".split(
        " ",
      ),
    );
    expect(Object.keys(answer.markets[0].lines[0])).toEqual(
      "line qty listEach list streetEach street listMethod streetMethod".split(" "),
    );
    expect(Object.keys(answer.markets[0].tiers[0])).toEqual(
      "tier kits kitCost goods postage duty tax handling listGain streetGain wantedGain listRatio streetRatio breakEvenShare listVerdict streetVerdict listHangsOn streetHangsOn".split(
        " ",
      ),
    );
  });
  it("markets keep the file's order, however they are asked for", () => {
    const answer = json(["worth", "sample", "--kit", "sp-2026-04", "--market", "kw", "--market", "se"]);
    expect(answer.markets.map(({ market }: { market: string }) => market)).toEqual(["se", "kw"]);
  });
  it("prices default to the home market, with minor digits by currency", () => {
    const answer = json(["prices", "sample", "--kit", "sp-2026-04"]);
    expect(Object.keys(answer.lines[0])).toEqual(["line", "qty", "list", "street"]);
    expect(Object.keys(answer.lines[0].list)).toEqual(["likely", "low", "high", "method", "sentence"]);
    expect(answer.lines[0].list.likely.currency).toBe("SEK");
    expect(
      json(["prices", "sample", "--kit", "sp-2026-04", "--market", "jp"]).lines[0].list.likely.amount,
    ).toMatch(/^\d+$/);
    expect(
      json(["prices", "sample", "--kit", "sp-2026-04", "--market", "kw"]).lines[0].list.likely.amount,
    ).toMatch(/^\d+\.\d{3}$/);
  });
  it("a missing rate is a fault with its place, exit 1", () => {
    const book = JSON.parse(readFileSync(samplePath, "utf8"));
    const { code, err } = command(["worth", "bare", "--kit", "sp-2026-04"], {
      bare: JSON.stringify({ ...book, rates: [] }),
    });
    expect(code).toBe(1);
    expect(err).toMatch(/^kits\[\d+\]\.(lines|tiers)\[\d+\]/);
  });
});

describe("writeup", () => {
  it.each(["text", "markdown", "html", "csv"])("as %s", (form) => {
    const { code, out } = command(["writeup", "sample", "--remake", "rm-slow-thaw", "--as", form]);
    expect(code).toBe(0);
    expect(out).toContain("9 of 9 from my own shelves");
  });
  it.each([
    [[], "9 of 9 from my own shelves"],
    [["--language", "en"], "9 of 9 from my own shelves"],
    [["--language", "sv"], "9 av 9 från mina egna hyllor"],
  ])("in the language asked for, else in English: %j", (options, said) => {
    const { code, out } = command(["writeup", "sample", "--remake", "rm-slow-thaw", ...options]);
    expect(code).toBe(0);
    expect(out).toContain(said);
  });
  it("keeps to a limit", () => {
    const { out } = command(["writeup", "sample", "--remake", "rm-slow-thaw", "--limit", "900"]);
    expect(new TextEncoder().encode(out).length).toBeLessThanOrEqual(900);
  });
});

it("coverage ranks every kit, best first", () => {
  const { kits } = json(["coverage", "sample"]);
  expect(kits).toHaveLength(10);
  const means = kits.map(({ meanLikeness }: { meanLikeness: number }) => meanLikeness);
  expect(means).toEqual([...means].toSorted((a, b) => b - a));
});

describe("misuse is exit 2, says what is wrong, and prints nothing on standard output", () => {
  it.each([
    [[]],
    [["juggle", "sample"]],
    [["check"]],
    [["check", "sample", "another"]],
    [["check", "sample", "--kit", "x"]],
    [["match", "sample"]],
    [["match", "sample", "--kit", "no-such-kit"]],
    [["match", "sample", "--kit", "__proto__"]],
    [["match", "sample", "--remake", "no-such-remake"]],
    [["match", "sample", "--kit", "sp-2026-02", "--remake", "rm-low-light"]],
    [["match", "sample", "--kit", "sp-2026-02", "--limit", "many"]],
    [["prices", "sample", "--kit", "sp-2026-02", "--market", "atlantis"]],
    [["worth", "sample", "--kit", "sp-2026-02", "--market", "se", "--market", "atlantis"]],
    [["writeup", "sample", "--remake", "rm-slow-thaw", "--as", "song"]],
    [["writeup", "sample", "--remake", "rm-slow-thaw", "--json"]],
    [["writeup", "sample", "--remake", "rm-slow-thaw", "--language", "no"]],
    [["writeup", "sample", "--remake", "rm-slow-thaw", "--language"]],
    [["difference", "#fff"]],
    [["difference", "#fff", "moss"]],
  ])("%j", (args) => {
    const { code, out, err } = command(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err.length).toBeGreaterThan(10);
    expect(err).not.toMatch(/\n\s+at /);
  });
});

it("help is no misuse", () => expect(command(["help"])).toMatchObject({ code: 0, err: "" }));
