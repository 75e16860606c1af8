import { useEffect } from "react";
import { today } from "../kits/today.ts";
import { format, words } from "../words/index.ts";

/** A text as CSS writes one. What would end it early is escaped, and line breaks are spaces. */
const cssText = (text: string): string => JSON.stringify(text.replace(/\s+/g, " "));

/** Puts the sheet's name and the day at the foot of each printed page, by way of styles/print.css. */
export function useSheetName(name: string): void {
  useEffect(() => {
    const write = () => {
      const text = words.printed(name, format.date(today()));
      document.documentElement.style.setProperty("--sheet-name", cssText(text));
    };
    addEventListener("beforeprint", write);
    return () => removeEventListener("beforeprint", write);
  }, [name]);
}
