import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Target } from "../../app/navigate.ts";
import { deskWords } from "../../words/desk.ts";
import type { MadeUpView } from "./made-up.ts";

const words = deskWords.next;

/** What is next when no remake is under way. */
export type StartView = Readonly<{ title: string; lead: string; act: string; to: Target }>;

/** A stash needs a kit, a kit needs a stash, and both are ready for a remake. */
export function startView(book: Workbook, { rows }: MadeUpView): StartView {
  if ((book.kits ?? []).length === 0) {
    return { title: words.logTitle, lead: words.logLead, act: words.logAct, to: { name: "kits" } };
  }
  if ((book.stash ?? []).length === 0) {
    return { title: words.stashTitle, lead: words.stashLead, act: words.stashAct, to: { name: "stash" } };
  }
  const [best] = rows;
  return {
    title: words.takeUpTitle,
    lead: best ? words.takeUpLead(best.name, best.figure) : words.takeUpNone,
    act: words.takeUpAct,
    to: { name: "remakes" },
  };
}
