export * from "./schema.ts";
export * from "./traits.ts";
