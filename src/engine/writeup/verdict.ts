import { lines, type Section } from "./document.ts";
import type { Subject } from "./subject.ts";

/** What the person made of each item and of the kit. */
export function verdictSection({ remake, kit, words }: Subject): Section {
  const said = (remake.verdicts ?? []).map(({ line, use, buy, replaces, text }) => {
    const name = (kit.lines ?? []).find(({ id }) => id === line)?.supply.name ?? "";
    const parts = [
      use === null || use === undefined ? "" : words.use(use),
      buy === true ? words.buy : buy === false ? words.notBuy : "",
      replaces ? words.replaces(replaces) : "",
    ].filter((part) => part !== "");
    return [`${name}: ${parts.join(", ")}`, text ?? ""].filter((part) => part !== "").join(". ");
  });
  return { id: "verdict", title: words.verdict, keep: 70, blocks: [lines(remake.verdict, ...said)] };
}

/** What was said wrongly in the recording, with the right of it. */
export const correctionSection = ({ remake, words }: Subject): Section => ({
  id: "corrections",
  title: words.corrections,
  keep: 84,
  blocks: [
    lines(
      ...(remake.corrections ?? []).map(({ at, said, meant }) =>
        words.correction(at ?? "", said ?? null, meant ?? null),
      ),
    ),
  ],
});

export const questionSection = ({ remake, words }: Subject): Section => ({
  id: "questions",
  title: words.questions,
  keep: 55,
  blocks: [lines(...(remake.questions ?? []))],
});
