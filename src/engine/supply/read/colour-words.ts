import { pigmentWords } from "./pigment-words.ts";
import { swedishColours } from "./words/sv-colours.ts";

/**
 * The CSS named colours (148, of which the seven spelt "gray" are found under "grey").
 * @see W3C CSS Color Module Level 4, section 6.1
 */
const css = `
  aliceblue f0f8ff, antiquewhite faebd7, aqua 00ffff, aquamarine 7fffd4, azure f0ffff, beige f5f5dc,
  bisque ffe4c4, black 000000, blanchedalmond ffebcd, blue 0000ff, blueviolet 8a2be2, brown a52a2a,
  burlywood deb887, cadetblue 5f9ea0, chartreuse 7fff00, chocolate d2691e, coral ff7f50,
  cornflowerblue 6495ed, cornsilk fff8dc, crimson dc143c, cyan 00ffff, darkblue 00008b, darkcyan
  008b8b, darkgoldenrod b8860b, darkgreen 006400, darkgrey a9a9a9, darkkhaki bdb76b, darkmagenta
  8b008b, darkolivegreen 556b2f, darkorange ff8c00, darkorchid 9932cc, darkred 8b0000, darksalmon
  e9967a, darkseagreen 8fbc8f, darkslateblue 483d8b, darkslategrey 2f4f4f, darkturquoise 00ced1,
  darkviolet 9400d3, deeppink ff1493, deepskyblue 00bfff, dimgrey 696969, dodgerblue 1e90ff, firebrick
  b22222, floralwhite fffaf0, forestgreen 228b22, fuchsia ff00ff, gainsboro dcdcdc, ghostwhite f8f8ff,
  gold ffd700, goldenrod daa520, green 008000, greenyellow adff2f, grey 808080, honeydew f0fff0,
  hotpink ff69b4, indianred cd5c5c, indigo 4b0082, ivory fffff0, khaki f0e68c, lavender e6e6fa,
  lavenderblush fff0f5, lawngreen 7cfc00, lemonchiffon fffacd, lightblue add8e6, lightcoral f08080,
  lightcyan e0ffff, lightgoldenrodyellow fafad2, lightgreen 90ee90, lightgrey d3d3d3, lightpink
  ffb6c1, lightsalmon ffa07a, lightseagreen 20b2aa, lightskyblue 87cefa, lightslategrey 778899,
  lightsteelblue b0c4de, lightyellow ffffe0, lime 00ff00, limegreen 32cd32, linen faf0e6, magenta
  ff00ff, maroon 800000, mediumaquamarine 66cdaa, mediumblue 0000cd, mediumorchid ba55d3, mediumpurple
  9370db, mediumseagreen 3cb371, mediumslateblue 7b68ee, mediumspringgreen 00fa9a, mediumturquoise
  48d1cc, mediumvioletred c71585, midnightblue 191970, mintcream f5fffa, mistyrose ffe4e1, moccasin
  ffe4b5, navajowhite ffdead, navy 000080, oldlace fdf5e6, olive 808000, olivedrab 6b8e23, orange
  ffa500, orangered ff4500, orchid da70d6, palegoldenrod eee8aa, palegreen 98fb98, paleturquoise
  afeeee, palevioletred db7093, papayawhip ffefd5, peachpuff ffdab9, peru cd853f, pink ffc0cb, plum
  dda0dd, powderblue b0e0e6, purple 800080, rebeccapurple 663399, red ff0000, rosybrown bc8f8f,
  royalblue 4169e1, saddlebrown 8b4513, salmon fa8072, sandybrown f4a460, seagreen 2e8b57, seashell
  fff5ee, sienna a0522d, silver c0c0c0, skyblue 87ceeb, slateblue 6a5acd, slategrey 708090, snow
  fffafa, springgreen 00ff7f, steelblue 4682b4, tan d2b48c, teal 008080, thistle d8bfd8, tomato
  ff6347, turquoise 40e0d0, violet ee82ee, wheat f5deb3, white ffffff, whitesmoke f5f5f5, yellow
  ffff00, yellowgreen 9acd32`;

/**
 * Everyday colour words, as many thousand people named colours on a screen. Names of pigments are not among them:
 * a word such as "ochre" is a paint before it is a colour.
 * @see the xkcd colour survey (2010), released under CC0
 */
const everyday = `
  algae 54ac68, amber feb308, amethyst 9b5fc0, apple 6ecb3c, apricot ffb16d, aubergine 3d0734, avocado
  90b134, banana ffff7e, berry 990f4b, blueberry 464196, blush f29e8e, brick a03623, bronze a87900,
  burgundy 610023, butter ffff81, butterscotch fdb147, caramel af6f09, carnation fd798f, celadon
  befdb7, charcoal 343837, cherry cf0234, chestnut 742802, cinnamon ac4f06, clay b66a50, cocoa 875f42,
  coffee a6814c, copper b66325, cranberry 9e003a, cream ffffc2, dandelion fedf08, denim 3b638c, drab
  828344, dust b2996e, dusk 4e5481, emerald 01a049, evergreen 05472a, fawn cfaf7b, fern 63a950, forest
  0b5509, golden f5bf03, grape 6c3461, grapefruit fd5956, grass 5cac2d, greyblue 77a1b5, heather
  a484ac, ice d6fffa, iris 6258c4, jade 1fa774, kiwi 9cef43, leaf 71aa34, lemon fdff52, lichen 8fb67b,
  lilac cea2fd, mahogany 4a0100, mango ffa62b, marigold fcc006, marine 042e60, maize f4d054, mauve
  ae7181, melon ff7855, merlot 730039, mint 9ffeb0, mocha 9d7651, moss 769958, mud 735c12, mulberry
  920a4e, mushroom ba9e88, mustard ceb301, ocean 017b92, parchment fefcaf, peach ffb07c, pear cbf85f,
  periwinkle 8e82fe, petrol 005f6a, pine 2b5d34, pistachio c0fa8b, pumpkin e17701, putty beae8a,
  raspberry b00149, rose cf6275, ruby ca0147, russet a13905, rust a83c09, saffron feb209, sage 87ae73,
  sand e2ca76, sapphire 2138ab, scarlet be0119, seafoam 80f9ad, seaweed 18d17b, sepia 985e2b, sky
  82cafc, slate 516572, spruce 0a5f38, steel 738595, stone ada587, straw fcf679, strawberry fb2943,
  sunflower ffc512, tangerine ff9408, taupe b9a281, terracotta ca6641, twilight 4e518b, velvet 750851,
  watermelon fd4659, wine 80013f, wisteria a87dc2, olive_green 677a04, navy_blue 001146, slate_green
  658d6d, steel_grey 6f828a, sea_blue 047495, leaf_green 5ca904, brick_red 8f1402, blood_red 980002,
  off_white ffffe4, cool_grey 95a3a6, warm_grey 978a84, blue_grey 607c8e, blue_green 137e6d, baby_blue
  a2cffe, baby_pink ffb7ce, dusty_blue 5a86ad, dusty_pink d58a94, dusty_rose c0737a, dusty_green
  76a973, dusty_purple 825f87, dark_brown 341c02, light_brown ad8150, pale_brown b1916e, pale_blue
  d0fefe, pale_grey fdfdfe, pale_pink ffcfdc, pale_purple b790d4, pale_yellow ffff84, pale_orange
  ffa756, light_orange fdaa48, light_purple bf77f6, light_red ff474c, dark_pink cb416b, dark_purple
  35063e, dark_teal 014d4e, dark_yellow d5b60a, light_teal 90e4c1, pale_teal 82cbb2, deep_blue 040273,
  deep_green 02590f, deep_red 9a0200, deep_purple 36013f, deep_violet 490648, deep_teal 00555a,
  deep_orange dc4d01, bright_blue 0165fc, bright_green 01ff07, bright_orange ff5b00, bright_pink
  fe01b1, bright_red ff000d, bright_yellow fffd01, bright_purple be03fd, bright_violet ad0afd,
  off_green 6ba353, red_orange fd3c06, moss_green 658b38, grass_green 3f9b0b, apple_green 76cd26,
  mint_green 8fff9f, bottle_green 044a05, sage_green 88b378, olive_brown 645403, reddish_brown 7f2b0a,
  ice_blue d7fffe, burnt_orange c04e01, rose_pink f7879a, salmon_pink fe7b7c, lemon_yellow fdff38,
  mustard_yellow d2bd0a, golden_yellow fec615, greenish_grey 96ae8d, bluish_grey 748b97`;

type Entry = readonly [word: string, value: string];

/** How a word is looked up: case, spaces, hyphens and apostrophes do not matter, "gray" is "grey". */
const folded = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[\s_'’`´-]+/g, "")
    .replace(/gray/g, "grey");

const entries = (table: string): readonly Entry[] =>
  table
    .trim()
    .split(/,\s+/)
    .map((entry) => {
      const [name = "", hex = ""] = entry.trim().split(/\s+/);
      return [folded(name), `#${hex}`];
    });

const english: ReadonlyMap<string, string> = new Map([
  ...entries(pigmentWords),
  ...entries(everyday),
  ...entries(css),
]);

/** Colour words of every language, folded, and the sRGB colour that each one brings to mind. */
const hexByWord: ReadonlyMap<string, string> = new Map([
  ...swedishColours.flatMap(([word, same]): readonly Entry[] => {
    const hex = english.get(folded(same));
    return hex ? [[folded(word), hex]] : [];
  }),
  ...english,
]);

/**
 * The sRGB hex of a colour word in any language.
 * @returns null for a word that is no common colour name: the name is kept then, and no colour is guessed
 */
export const hexOfWord = (words: string): string | null => hexByWord.get(folded(words)) ?? null;

const plainForms: ReadonlyMap<string, string> = new Map(
  swedishColours
    .filter(([word, , plain]) => word !== plain)
    .map(([word, , plain]) => [folded(word), plain.replaceAll("_", " ")]),
);

/** A colour word in the form that a name has: "mossgröna" is "mossgrön". */
export const plainColour = (words: string): string => plainForms.get(folded(words)) ?? words;
