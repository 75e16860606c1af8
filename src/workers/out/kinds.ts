/** What a list can be saved as. */
export const listKinds = ["xlsx", "ods", "csv"] as const;
export type ListKind = (typeof listKinds)[number];
