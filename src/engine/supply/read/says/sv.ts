import { valueWord } from "../../values.ts";
import type { Says } from "./says.ts";

const traitNames: ReadonlyMap<string, string> = new Map([
  ["base", "bas"],
  ["tips", "spetsar"],
  ["tip", "spets"],
  ["refillable", "påfyllningsbar"],
  ["widthMm", "bredd"],
  ["waterproof", "vattenfast"],
  ["core", "kärna"],
  ["grade", "hårdhet"],
  ["form", "form"],
  ["binder", "bindemedel"],
  ["medium", "färgtyp"],
  ["ml", "mängd"],
  ["pigments", "pigment"],
  ["opacity", "täckförmåga"],
  ["kind", "sort"],
  ["shape", "form"],
  ["hair", "hår"],
  ["waterReservoir", "vatten i skaftet"],
  ["use", "användning"],
  ["size", "storlek"],
  ["gsm", "ytvikt"],
  ["sheets", "antal ark"],
  ["surface", "yta"],
  ["coated", "bestrykning"],
  ["acidFree", "syrafritt"],
  ["bound", "block eller bok"],
]);

const markers: ReadonlyMap<string, string> = new Map([
  ["alcohol", "spritbaserad märkpenna"],
  ["acrylic", "akrylmärkpenna"],
  ["oil", "oljebaserad märkpenna"],
  ["chalk", "kritmärkpenna"],
]);

const mediums: ReadonlyMap<string, string> = new Map([
  ["watercolour", "akvarell"],
  ["gouache", "gouache"],
  ["acrylic", "akryl"],
  ["oil", "oljefärg"],
  ["casein", "kaseinfärg"],
  ["tempera", "tempera"],
]);

const graphites: ReadonlyMap<string, string> = new Map([
  ["charcoal", "kol"],
  ["charcoal pencil", "kolpenna"],
  ["charcoal stick", "kolstav"],
  ["carbon pencil", "karbonpenna"],
  ["soluble pencil", "vattenlöslig blyertspenna"],
  ["soluble stick", "vattenlöslig grafitstav"],
  ["soluble", "vattenlöslig grafit"],
  ["graphite stick", "grafitstav"],
  ["stick", "grafitstav"],
  ["lead", "blyertsstift"],
  ["graphite lead", "blyertsstift"],
  ["pencil", "blyertspenna"],
  ["graphite pencil", "grafitpenna"],
  ["graphite", "grafit"],
]);

const pastels: ReadonlyMap<string, string> = new Map([
  ["soft", "mjukpastell"],
  ["hard", "hårdpastell"],
  ["oil", "oljepastell"],
  ["pan", "pastell i kopp"],
]);

const brushes: ReadonlyMap<string, string> = new Map([
  ["round", "rund pensel"],
  ["flat", "flat pensel"],
  ["filbert", "filbertpensel"],
  ["mop", "mopp-pensel"],
  ["liner", "linjepensel"],
  ["fan", "solfjäderspensel"],
  ["angle", "sned pensel"],
  ["wash", "bred pensel"],
]);

const erasers: ReadonlyMap<string, string> = new Map([
  ["kneaded", "knådbart suddgummi"],
  ["plastic", "suddgummi av plast"],
  ["gum", "suddgummi av artgum"],
  ["powered", "elektriskt suddgummi"],
  ["pencil", "suddpenna"],
]);

const uses: ReadonlyMap<string, string> = new Map([
  ["marker", "marker"],
  ["layout", "layout"],
  ["cartridge", "rit"],
  ["bristol", "bristol"],
  ["watercolour", "akvarell"],
  ["mixed", "blandteknik"],
  ["toned", "tonat "],
  ["tracing", "kalker"],
  ["canvas", "canvas"],
  ["print", "grafik"],
]);

const families: Says["families"] = {
  marker: "en märkpenna",
  liner: "en fineliner",
  graphite: "en penna",
  "colour-pencil": "en färgpenna",
  paint: "målarfärg",
  ink: "tusch",
  pastel: "en pastell",
  brush: "en pensel",
  eraser: "ett suddgummi",
  paper: "papper",
  tool: "ett verktyg",
  other: "något annat",
};

const bound = (word: string): string =>
  word === "book" ? "bok" : /^(?:pad|block)$/.test(word) ? "block" : "papper";

const articles: ReadonlyMap<string, string> = new Map([
  ["block", "ett block"],
  ["limmat block", "ett limmat block"],
  ["bok", "en bok"],
]);

export const inSwedish: Says = {
  families,
  trait: (name) => traitNames.get(name) ?? name,
  colour: "färg",
  value: (family, trait, value) => valueWord(family, trait, value, "sv"),
  kind: (family, told) => {
    const said = families[family];
    const more = told.filter((value) => !said.endsWith(value));
    return [said, ...more.map((value) => articles.get(value) ?? value)].join(", ");
  },
  not: (name) => `inte ${name}`,
  about: (name, value) => `${name}: ${value}`,
  maker: "tillverkare",
  line: "serie",
  quantity: (count) => `${count} st`,
  figure: (value) => String(value).replace(".", ","),
  sheets: (count) => `${count} ark`,
  grade: (grade) => `hårdhet ${grade}`,
  pigment: (name) => `pigment ${name}`,
  lightfast: (rating) => `ljusäkthet ${rating}`,
  pounds: (gsm) => `${gsm} g/m² i akvarellpapper`,
  price: (written) => `pris: ${written}`,
  called: {
    sketchbook: "Skissbok",
    postcards: "Vykort",
    "bristol-board": "Bristolkartong",
    "canvas-board": "Dukpannå",
    canvas: "Målarduk",
    refill: "Refill",
    "pen-ink": "Bläck",
    "brush-pen": "Penselpenna",
    "paint-marker": "Färgmarker",
    highlighter: "Överstrykningspenna",
    "watercolour-pencil": "Akvarellpenna",
    "pastel-pencil": "Pastellpenna",
    "water-brush": "Vattenpensel",
    "gel-pen": "Gelpenna",
    ballpoint: "Kulspetspenna",
    "dip-pen": "Stålpenna",
    "fountain-pen": "Reservoarpenna",
    rollerball: "Rollerpenna",
    pen: "Penna",
  },
  names: {
    marker: (word) => markers.get(word("base")) ?? "märkpenna",
    liner: () => "fineliner",
    graphite: (word) => graphites.get(`${word("core")} ${word("form")}`.trim()) ?? "blyerts",
    "colour-pencil": () => "färgpenna",
    paint: (word) => mediums.get(word("medium")) ?? "färg",
    ink: () => "tusch",
    pastel: (word) => pastels.get(word("kind")) ?? "pastell",
    brush: (word) => brushes.get(word("shape")) ?? "pensel",
    eraser: (word) => erasers.get(word("kind")) ?? "suddgummi",
    paper: (word) => `${uses.get(word("use")) ?? ""}${bound(word("bound"))}`,
    tool: () => "verktyg",
    other: () => "",
  },
};
