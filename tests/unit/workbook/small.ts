/** A small workbook that uses most of the format; tests change copies of it. Every name is invented. */
export const smallWorkbook = () => ({
  format: "understudy-workbook",
  version: 1,
  name: "Test",
  home: { market: "se", reportMarkets: ["se", "jp"] },
  markets: [
    {
      id: "se",
      name: "Sweden",
      currency: "SEK",
      import: [{ from: ["jp"], taxRate: "0.25" }, { from: "any" }],
    },
    { id: "jp", name: "Japan", currency: "JPY", import: null },
  ],
  rates: [{ date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250", JPY: "163.45" } }],
  shops: [
    { id: "s1", name: "Corner shop", market: "se", postageTo: { jp: { amount: "90", currency: "SEK" } } },
  ],
  photos: [{ id: "ph-1" }],
  stash: [
    {
      id: "st-1",
      supply: {
        family: "paint",
        name: "Gouache, moss",
        colour: { hex: "#6b7d3a" },
        traits: { medium: "gouache", ml: 15, glitter: true },
      },
      twinOf: ["st-2"],
      photos: ["ph-1"],
      acquired: "2024-11-02",
    },
    {
      id: "st-2",
      supply: { family: "paper", name: "Pad", traits: { size: [210, 297], gsm: 120 } },
      fromKit: "k1",
    },
  ],
  kits: [
    {
      id: "k1",
      maker: "Invented Parcel",
      period: "2026-04",
      shipsFrom: "jp",
      tiers: [{ id: "t1", kits: 1, price: { amount: "24.00", currency: "EUR" }, markets: ["se"] }],
      lines: [
        {
          id: "l1",
          supply: { family: "paint", name: "Gouache, moss" },
          want: "0.5",
          evidence: [
            { id: "e1", kind: "shop", price: { amount: "52.00", currency: "SEK" }, shop: "s1", market: "se" },
            { id: "e2", kind: "precedent", line: "k1/l1" },
            { id: "e3", kind: "not-sold" },
          ],
          settled: [{ kind: "list", market: "se", price: { amount: "50", currency: "SEK" } }],
        },
      ],
      errata: [{ lines: ["l1"], text: "…" }],
    },
  ],
  remakes: [
    {
      id: "r1",
      kit: "k1",
      started: "2026-05-02",
      picks: [{ line: "l1", uses: [{ stash: "st-1", share: "1" }], by: "person" }],
      essentials: [{ stash: "st-2", role: "carry" }],
      published: [{ at: "2026-05-09", text: "…", figures: { anything: [1, { deep: true }] } }],
      entries: [{ by: "somebody", picks: [{ line: "l1", uses: [{ stash: "their-own-7" }] }] }],
    },
  ],
  ourOwnExtension: { kept: true },
});
