import type { supplyWords as en, ValueWords, Ways } from "./en.ts";

const and = (words: readonly string[]): string => words.join(" och ");

/** Papers by their use, with how a pad or a block of them may be called. */
const papers: ReadonlyMap<string, Ways> = new Map<string, Ways>([
  ["marker", ["papper för märkpennor", "märkpenn", "marker"]],
  ["layout", ["layoutpapper", "layout"]],
  ["cartridge", ["ritpapper", "ritblock", "ritark", "teckning"]],
  ["bristol", ["bristolkartong", "bristol"]],
  ["watercolour", ["akvarellpapper", "akvarell"]],
  ["mixed", ["papper för blandteknik", "blandteknik"]],
  ["toned", ["tonat papper", "tonat"]],
  ["tracing", ["kalkerpapper", "kalker"]],
  ["canvas", ["målarduk", "duk", "canvas"]],
  ["print", ["grafikpapper", "grafik"]],
]);

/** What supplies are known to be, in Swedish. Adjectives agree with the family: "en märkpenna", "ett suddgummi". */
export const supplyWords: typeof en = {
  values: {
    marker: {
      base: {
        alcohol: "spritbaserad",
        "water-dye": "vattenbaserat färgämne",
        "water-pigment": "vattenbaserat pigment",
        acrylic: "akryl",
        oil: "oljebaserad",
        chalk: "krita",
      },
      tips: {
        brush: "penselspets",
        chisel: "kilformad spets",
        bullet: "rund spets",
        fine: "fin spets",
      },
    },
    liner: {
      base: {
        pigment: "pigment",
        dye: "färgämne",
        gel: "gel",
        ballpoint: "kulspets",
        alcohol: "spritbaserad",
      },
      tip: { fibre: "fiberspets", brush: "penselspets", roller: "rollerspets", nib: "stålspets" },
    },
    graphite: {
      core: { graphite: "grafit", charcoal: "kol", carbon: "karbon", soluble: "vattenlöslig" },
      form: { pencil: "penna", stick: "stav", lead: "stift" },
    },
    "colour-pencil": {
      binder: { wax: "vaxbaserad", oil: "oljebaserad", soluble: "vattenlöslig", pastel: "pastell" },
    },
    paint: {
      medium: {
        watercolour: "akvarell",
        gouache: "gouache",
        acrylic: "akryl",
        oil: "olja",
        casein: "kasein",
        tempera: "tempera",
        ink: "tusch",
      },
      form: {
        tube: "tub",
        pan: "kopp",
        "half-pan": "halvkopp",
        bottle: "flaska",
        stick: "krita",
        pot: "burk",
      },
      opacity: { opaque: "täckande", semi: "halvtäckande", transparent: "genomsynlig" },
    },
    ink: {
      base: {
        dye: "färgämne",
        pigment: "pigment",
        shellac: "schellack",
        alcohol: "spritbaserad",
        acrylic: "akryl",
      },
    },
    pastel: { kind: { soft: "mjuk", hard: "hård", oil: "oljepastell", pan: "i kopp" } },
    brush: {
      shape: {
        round: "rund",
        flat: "flat",
        filbert: "filbert",
        mop: "mopp",
        liner: "linjepensel",
        fan: "solfjäder",
        angle: "sned",
        wash: "bred",
      },
      hair: { natural: "naturhår", synthetic: "syntet", mixed: "blandhår" },
    },
    eraser: {
      kind: {
        kneaded: "knådbart",
        plastic: "plast",
        rubber: "naturgummi",
        gum: "artgum",
        powered: "elektriskt",
        pencil: "suddpenna",
      },
    },
    paper: {
      use: {
        marker: "märkpennor",
        layout: "layout",
        cartridge: "teckning",
        bristol: "bristol",
        watercolour: "akvarell",
        mixed: "blandteknik",
        toned: "tonat",
        tracing: "kalkering",
        canvas: "målarduk",
        print: "grafik",
      },
      surface: { smooth: "slät", medium: "medelgrov", rough: "grov" },
      coated: { none: "obestruket", one: "på ena sidan", both: "på båda sidorna" },
      bound: { pad: "block", book: "bok", block: "limmat block", loose: "lösa ark" },
    },
    tool: {
      kind: {
        sharpener: "pennvässare",
        ruler: "linjal",
        knife: "kniv",
        palette: "palett",
        tape: "tejp",
        stencil: "schablon",
        blender: "estomp",
        clip: "klämma",
        other: "annat",
      },
    },
  } satisfies ValueWords,

  and,
  tips: and,
  tip: (tip) => tip,
  refillable: "påfyllningsbar",
  waterproof: "vattenfast",
  binder: (binder) => binder,
  surface: (surface) => `${surface} yta`,
  holdsWater: ["med vattenbehållare", "vattenbehållare", "vattenpensel"],
  gsm: (weight) => `${weight} g/m²`,
  paper: (use) => papers.get(use) ?? [`papper för ${use}`],
  coatedOne: "bestruket på ena sidan",
  coatedBoth: "bestruket på båda sidorna",
  sheets: (count) => `${count} ark`,
};
