import { spoken } from "./spoken.ts";

const { asDone: said } = await spoken({ en: () => import("./en/done.ts"), sv: () => import("./sv/done.ts") });

/** An act's name as what was just done: "Log the kit …" reads "Logged the kit …". Others stay as they are. */
export const asDone: (label: string) => string = said;
