/**
 * Supply: what a supply is (family, traits, sizes), and when two of them are the same product.
 *
 * Units    millimetres (sheets: short side first), grams per square metre, millilitres; grades as places on
 *          the scale from hard to soft.
 * Sources  ISO 216 and ISO 269 (paper sizes), ANSI/ASME Y14.1 (US sizes), GS1 General Specifications (GTIN).
 * Not here How like two different supplies are: `match/`.
 */
export { type DoubleReason, type Doubles, doublesIn, keptApartOf } from "./doubles.ts";
export { factsOf, sizeWords } from "./facts.ts";
export { foldText } from "./fold.ts";
export { gradeRank } from "./grade.ts";
export { gtin14, gtinCheckDigit, isGtin, isGtinSlip } from "./gtin.ts";
export { type Identity, identityOf, sameIdentity, sameProduct } from "./identity.ts";
export { type KinSide, sidesOf } from "./kin.ts";
export { type Alike, alikeUpTo, manyAlike } from "./many.ts";
export { type SheetMm, sheetMm } from "./paper.ts";
export * from "./read/index.ts";
export { type Relation, type Relations, relationsOf } from "./relations.ts";
export * from "./schema.ts";
export * from "./traits.ts";
export { valueWord } from "./values.ts";
