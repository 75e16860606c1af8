import { describe, expect, it } from "vitest";
import { type Kinship, relationsOf, type StashItem, type Supply } from "../../../src/engine/supply/index.ts";

const product = (line: string, code: string | null, name = `${line} ${code}`): Supply => ({
  family: "marker",
  name,
  maker: "Nordlys",
  line,
  code,
});
const item = (id: string, supply: Supply, twinOf: string[] = []): StashItem => ({ id, supply, twinOf });
const side = (line: string, code?: string) => ({ maker: "Nordlys", line, code: code ?? null });
const kin = (
  kind: "twin" | "same-colour" | "refill-fits",
  a: string,
  b: string,
  by?: "code" | "name",
): Kinship => {
  const [first, second] = [a.split("/"), b.split("/")];
  return {
    id: `${kind} ${a} ${b}`,
    kind,
    a: side(first[0] ?? "", first[1]),
    b: side(second[0] ?? "", second[1]),
    ...(by ? { by } : {}),
  };
};

function tied(supply: Supply, stash: StashItem[], kinships: Kinship[] = []) {
  const found = relationsOf(stash, kinships).of(supply);
  return Object.fromEntries([...found].map(([at, relation]) => [stash[at]?.id, relation]));
}

const wanted = product("Fjell", "1");

describe("twins", () => {
  it("are the same product's own links, either way round", () => {
    const stash = [
      item("a", wanted, ["b"]),
      item("b", product("Skog", "7")),
      item("c", product("Elv", "9"), ["a"]),
    ];
    expect(tied(wanted, stash)).toEqual({ a: "same", b: "twin", c: "twin" });
  });

  it("are found for a kit item nobody here owns, over products nobody owns", () => {
    const stash = [item("z", product("Elv", "3"))];
    const chain = [kin("twin", "Skog/2", "Fjell/1"), kin("twin", "Skog/2", "Elv/3")];
    expect(tied(wanted, stash, chain)).toEqual({ z: "twin" });
    expect(tied(wanted, stash, chain.slice(1))).toEqual({});
  });

  it("go through any number of links of both sorts", () => {
    const stash = [
      item("b", product("Skog", "2"), ["c"]),
      item("c", product("Elv", "3")),
      item("d", product("Hav", "4")),
    ];
    const links = [kin("twin", "Fjell/1", "Skog/2"), kin("twin", "Hav/4", "Elv/3")];
    expect(tied(wanted, stash, links)).toEqual({ b: "twin", c: "twin", d: "twin" });
  });

  it("pair whole lines by code unless told to pair by name", () => {
    const stash = [item("code", product("Skog", "1")), item("name", product("Skog", "88", "Fjell 1"))];
    expect(tied(wanted, stash, [kin("twin", "Skog", "Fjell")])).toEqual({ code: "twin" });
    expect(tied(wanted, stash, [kin("twin", "Fjell", "Skog", "name")])).toEqual({ name: "twin" });
  });

  it("include another piece of the twin that is known by its GTIN only", () => {
    const twin = { ...product("Skog", "2"), gtin: "12341238" };
    const stash = [item("b", twin), item("c", { family: "marker", name: "?", gtin: "12341238" })];
    expect(tied(wanted, stash, [kin("twin", "Fjell/1", "Skog/2")])).toEqual({ b: "twin", c: "twin" });
  });

  it("do not spread from code to code through a thing without one", () => {
    // `bare` may be either of two products; that does not make the two one.
    const [bare, one, other] = [
      product("Fjell", null, "Moss"),
      product("Fjell", "1", "Moss"),
      product("Fjell", "2", "Moss"),
    ];
    expect(tied(one, [item("a", bare), item("b", other)])).toEqual({ a: "same" });
  });

  it("take no notice of refills, nor of a code without maker and line", () => {
    const stash = [item("b", product("Skog", "2")), item("n", { family: "marker", name: "n", code: "1" })];
    const nobodys: Kinship = { id: "x", kind: "twin", a: { code: "1" }, b: side("Fjell", "1") };
    expect(tied(wanted, stash, [kin("refill-fits", "Fjell/1", "Skog/2"), nobodys])).toEqual({});
  });
});

describe("the same colour", () => {
  it("is linked by its kinship, and goes on through twins", () => {
    const stash = [item("b", product("Skog", "2")), item("c", product("Elv", "3"))];
    const links = [kin("same-colour", "Skog/2", "Fjell/1"), kin("twin", "Skog/2", "Elv/3")];
    expect(tied(wanted, stash, links)).toEqual({ b: "same-colour", c: "same-colour" });
  });

  it("never hides a twin", () => {
    const links = [kin("same-colour", "Fjell", "Skog"), kin("twin", "Fjell/1", "Skog/1")];
    expect(tied(wanted, [item("b", product("Skog", "1"))], links)).toEqual({ b: "twin" });
  });
});

it("a chain of five thousand twins is walked to its end", () => {
  const stash = Array.from({ length: 5000 }, (_, at) =>
    item(`s${at}`, product("Skog", `${at}`), [`s${at + 1}`]),
  );
  const found = relationsOf(stash, [kin("twin", "Fjell/1", "Skog/0")]).of(wanted);
  expect(found.size).toBe(5000);
});
