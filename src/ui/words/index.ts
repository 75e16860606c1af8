/** Words: every text of the frame and the parts, and the one way to print numbers, money and dates. */
import { spoken } from "./spoken.ts";

export { type Formatter, format, formatter, type MoneyPieces } from "./format.ts";

/** The words of the frame and the parts, in the language in use. */
export const { frameWords: words } = await spoken({
  en: () => import("./en/frame.ts"),
  sv: () => import("./sv/frame.ts"),
});
