import type { Says } from "./says.ts";

const traitNames: ReadonlyMap<string, string> = new Map([
  ["widthMm", "width"],
  ["ml", "amount"],
  ["gsm", "weight"],
  ["coated", "coating"],
  ["acidFree", "acid-free"],
  ["bound", "pad or block"],
  ["waterReservoir", "water in the handle"],
]);

const mediums: ReadonlyMap<string, string> = new Map([
  ["oil", "oil paint"],
  ["ink", "paint"],
  ["", "paint"],
]);

const cores: ReadonlyMap<string, string> = new Map([
  ["soluble", "water-soluble graphite"],
  ["", "graphite"],
]);

const uses: ReadonlyMap<string, string> = new Map([
  ["mixed", "mixed media"],
  ["cartridge", "drawing"],
]);

const article = (word: string): string => (/^(?:pad|block|book)$/.test(word) ? `a ${word}` : word);

const families: Says["families"] = {
  marker: "a marker",
  liner: "a liner",
  graphite: "a pencil",
  "colour-pencil": "a colour pencil",
  paint: "paint",
  ink: "ink",
  pastel: "a pastel",
  brush: "a brush",
  eraser: "an eraser",
  paper: "paper",
  tool: "a tool",
  other: "something else",
};

export const inEnglish: Says = {
  families,
  trait: (name) => traitNames.get(name) ?? name,
  colour: "colour",
  value: (_, __, value) => value,
  kind: (family, values) => {
    const said = families[family];
    return [said, ...values.filter((value) => !said.endsWith(value)).map(article)].join(", ");
  },
  not: (name) => `not ${name}`,
  about: (name, value) => `${name}: ${value}`,
  maker: "maker",
  line: "line",
  quantity: (count) => `${count} of them`,
  figure: String,
  sheets: (count) => (count === 1 ? "1 sheet" : `${count} sheets`),
  grade: (grade) => `grade ${grade}`,
  pigment: (name) => `pigment ${name}`,
  lightfast: (rating) => `lightfastness ${rating}`,
  pounds: (gsm) => `${gsm} g/m² in watercolour paper`,
  price: (written) => `price: ${written}`,
  called: {
    sketchbook: "Sketchbook",
    postcards: "Postcards",
    "bristol-board": "Bristol board",
    "canvas-board": "Canvas board",
    canvas: "Canvas",
    refill: "Refill",
    "pen-ink": "Ink",
    "brush-pen": "Brush pen",
    "paint-marker": "Paint marker",
    highlighter: "Highlighter",
    "watercolour-pencil": "Watercolour pencil",
    "pastel-pencil": "Pastel pencil",
    "water-brush": "Water brush",
    "gel-pen": "Gel pen",
    ballpoint: "Ballpoint",
    "dip-pen": "Dip pen",
    "fountain-pen": "Fountain pen",
    rollerball: "Rollerball",
    pen: "Pen",
  },
  names: {
    marker: (word) => (word("base").startsWith("water") ? "marker" : `${word("base")} marker`),
    liner: () => "liner",
    graphite: (word) => `${cores.get(word("core")) ?? word("core")} ${word("form")}`,
    "colour-pencil": () => "colour pencil",
    paint: (word) => mediums.get(word("medium")) ?? word("medium"),
    ink: () => "ink",
    pastel: (word) => `${word("kind")} pastel`,
    brush: (word) => `${word("shape")} brush`,
    eraser: (word) => (word("kind") === "pencil" ? "eraser pencil" : `${word("kind")} eraser`),
    paper: (word) => {
      const bound = word("bound");
      const use = uses.get(word("use")) ?? word("use");
      return `${use} ${bound === "" || bound === "loose" ? "paper" : bound}`;
    },
    tool: (word) => word("kind"),
    other: () => "",
  },
};
