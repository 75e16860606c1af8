// Writes docs/workbook.schema.json from the zod schemas, so that the two can never drift apart.
import { writeFileSync } from "node:fs";
import { runnerImport } from "vite";

const { module } = await runnerImport("./src/engine/workbook/index.ts", { configFile: false });
writeFileSync("docs/workbook.schema.json", `${JSON.stringify(module.jsonSchema(), null, 2)}\n`);
