/**
 * How near each stand-in is, worked by hand from the published table of docs/likeness.md: the mean of the traits
 * that the kit item knows, by weight; colour counts 2^(−ΔE00 ÷ 12). near.ts works them once more, with another
 * library's ΔE00.
 */

// Paint: colour 6, medium 4, form 1, ml ½, together 11½. c is the colour's part.
//   olive for moss    ΔE00  2.33, c 0.8743: (6c + 5.5) ÷ 11.5 = 0.9344
//   fern for moss     ΔE00  8.29, c 0.6194:                     0.8014
//   brick for rust    ΔE00  5.07, c 0.7461; 20 ml for 15: 1 − ln(4/3) ÷ ln 10 = 0.8751: 0.8621
//   half pan for rust ΔE00  4.10, c 0.7890; watercolour for gouache ½, half pan for tube 0.6, ml not known ½:
//                     (4.734 + 2 + 0.6 + 0.25) ÷ 11.5 = 0.6595
//   olive for lichen  ΔE00  7.11, c 0.6632: 0.8243
//   fern for lichen   ΔE00 18.07, c 0.3521: 0.6620
// Both greens would like the olive. moss-olive + lichen-fern = 1.5964 is less than moss-fern + lichen-olive =
// 1.6257, so the best for all is not the best for the first: 0.0293, "3 less over all eight".
// Colour pencil, straw for sand: ΔE00 5.53, c 0.7264; oil for wax 0.8; (6c + 3 × 0.8) ÷ 9 = 0.7509
// Graphite 4B for 2B: 2 of 21 steps apart: (4 × 19/21 + 3 + 2) ÷ 9 = 0.9577; 1 − 0.9577 = 0.0423
// Liner, 0.3 mm for 0.5: 1 − ln(5/3) ÷ ln 4 = 0.6315; (4 + 3 × 0.6315 + 2 + 2) ÷ 11 = 0.8995
// Paper, 200 gsm for 300: 1 − ln 1.5 ÷ ln 4 = 0.7075; larger counts whole; (4 + 3 + 3 × 0.7075 + 0.5) ÷ 10.5 = 0.9164
// Paper, the pad: cartridge for watercolour 0.4; 210 × 297 of 240 × 320 mm = 0.8121; 120 gsm for 300: 0.3390; pad
//   for block 0.8: (1.6 + 2.4363 + 1.0171 + 0.4) ÷ 10.5 = 0.5194; 0.9164 − 0.5194 = 0.3970

/** Each row as it is first solved. */
export const solved = [
  "1 why? Gouache, moss 2 of these, tube, 15 ml Gouache, fern tube, 15 ml, 2 in the kit, 1 here 8.3 apart, darker Next: olive, 93; 13 more here, 3 less over all eight. swap 80 fairly near",
  "2 why? Gouache, rust tube, 15 ml Gouache, brick tube, 20 ml 5.1 apart, leaning to red Next: watercolour, burnt orange, 66; 20 less. swap 86 very near",
  "3 why? Gouache, lichen tube, 15 ml Gouache, olive tube, 15 ml 7.1 apart, darker Next: fern, 66; 16 less here, 3 less over all eight. swap 82 fairly near",
  "4 why? Colour pencil, sand wax binder Colour pencil, straw oil binder 5.5 apart, stronger 75 fairly near",
  "5 why? Graphite pencil 2B Graphite pencil 2B The very same product Next: graphite pencil, 4B, 96; 4 less. swap 100 the same",
  "6 why? Liner, black 0.5 mm, pigment, waterproof Liner, black 0.3 mm, pigment, waterproof No difference in colour; width differs 90 very near",
  "7 why? Kneaded eraser Nothing close Nothing of its kind on your shelves. Leave it out Pick one anyway — gap",
  // A3 is 297 × 420 mm (ISO 216): 297 − 240 = 57 beside the piece, 420 − 320 = 100 at its end
  "8 why? Cut each sheet to 240 × 320 mm: one piece a sheet, left over: 57 × 420 mm and 100 × 240 mm. Watercolour block, 24 × 32 cm 300 gsm, 20 sheets Watercolour block, A3 200 gsm, 12 sheets Larger: cut down, one piece a sheet Next: drawing pad, A4, 52; 40 less. swap 92 very near",
] as const;

/** The rows that differ once a person has taken the olive for line 1: it goes from line 3, which gets the fern. */
export const afterPick = {
  0: "1 why? Gouache, moss 2 of these, tube, 15 ml Gouache, olive tube, 15 ml, 2 in the kit, 1 here 2.3 apart, a little lighter Your pick. Let it choose again 93 very near",
  2: "3 why? Gouache, lichen tube, 15 ml Gouache, fern tube, 15 ml 18.1 apart, much darker 66 fairly near",
} as const;

export const pickTold = "Line 1 now has gouache, olive. Line 3 changed with it.";

/**
 * Mean of eight lines, a gap counting 0; colours apart on average over the five lines with a colour on both sides;
 * by how much the ten steps between those colours changed, twice over ÷ (5 × 4).
 */
export const means = {
  before: "76 of 100, colours 5.2 apart, steps 4.6 off",
  after: "75 of 100, colours 6.2 apart, steps 5.3 off",
} as const;

/** What "why?" compares on line 6, and the sum of it. */
export const comparedLiner = {
  rows: [
    ["Colour", "black", "black", "1.00", "4"],
    ["Width", "0.5 mm", "0.3 mm", "0.63", "3"],
    ["Kind of ink", "pigment", "pigment", "1.00", "2"],
    ["Waterproof", "yes", "yes", "1.00", "2"],
  ],
  sum: "0.90 for the traits, which comes to 90 of 100. All known on both sides.",
} as const;
