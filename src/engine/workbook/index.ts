export * from "./remake.ts";
export * from "./schema.ts";
