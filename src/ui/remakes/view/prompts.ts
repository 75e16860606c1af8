import type { Subject } from "./solve.ts";

/** The prompts in sight: the remake's own, else the kit's. */
export function promptsOf({ kit, remake }: Pick<Subject, "kit" | "remake">): readonly string[] {
  const own = (remake.prompts ?? []).flatMap(({ text }) => (text ? [text] : []));
  return own.length > 0 ? [...new Set(own)] : kit.prompt ? [kit.prompt] : [];
}
