import { lines, type Section } from "./document.ts";
import type { Subject } from "./subject.ts";

const useWords = ["never", "hardly ever", "now and then", "often", "most weeks", "every day"];

/** What the person made of each item and of the kit. */
export function verdictSection({ remake, kit }: Subject): Section {
  const said = (remake.verdicts ?? []).map(({ line, use, buy, replaces, text }) => {
    const name = (kit.lines ?? []).find(({ id }) => id === line)?.supply.name ?? "";
    const parts = [
      use === null || use === undefined ? "" : `I would use it ${useWords[use] ?? ""}`,
      buy === true ? "would buy it" : buy === false ? "would not buy it" : "",
      replaces ? `it would replace ${replaces}` : "",
    ].filter((part) => part !== "");
    return [`${name}: ${parts.join(", ")}`, text ?? ""].filter((part) => part !== "").join(". ");
  });
  return { id: "verdict", title: "My verdict", keep: 70, blocks: [lines(remake.verdict, ...said)] };
}

/** What was said wrongly in the recording, with the right of it. */
export const correctionSection = ({ remake }: Subject): Section => ({
  id: "corrections",
  title: "Corrections",
  keep: 84,
  blocks: [
    lines(
      ...(remake.corrections ?? []).map(
        ({ at, said, meant }) =>
          `${at ? `At ${at} ` : ""}I said ${said ?? "something else"}; I meant ${meant ?? "otherwise"}`,
      ),
    ),
  ],
});

export const questionSection = ({ remake }: Subject): Section => ({
  id: "questions",
  title: "Tell me",
  keep: 55,
  blocks: [lines(...(remake.questions ?? []))],
});
