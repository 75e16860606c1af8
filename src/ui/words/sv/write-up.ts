import type { writeUpWords as en } from "../en/write-up.ts";

export const writeUpWords: typeof en = {
  textIn: "Text på",
  chooseLanguage: "Välj språk för texten",
};
