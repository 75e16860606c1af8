import { gtin14, isGtin } from "../../../engine/supply/index.ts";

/** A bar code's number typed as a search, as things are found by it: in full, so that 12 digits find 13. Null: none. */
export const askedGtin = (text: string): string | null => (isGtin(text.trim()) ? gtin14(text.trim()) : null);
