/**
 * Supply form: every field of a supply of any family, read off the schemas. Used wherever a supply is put in or
 * put right: a kit's line, a thing in the stash. It tells which field changed and keeps nothing itself.
 */
export { ColourCode } from "./colour-field.tsx";
export { KeptField, readNeeded, readText, readWhole } from "./kept-field.tsx";
export { OfferedField } from "./offered-field.tsx";
export { SupplyForm } from "./supply-form.tsx";
export { TraitInputField } from "./trait-input.tsx";
export { type Offers, offersIn } from "./view/offers.ts";
export { readNumber, readSize } from "./view/read-trait.ts";
export { traitField } from "./view/trait-fields.ts";
