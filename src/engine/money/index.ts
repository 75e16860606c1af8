export * from "./currencies.ts";
export * from "./schema.ts";
