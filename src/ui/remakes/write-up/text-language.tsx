import type { Language } from "../../../engine/record/index.ts";
import type { Remake } from "../../../engine/workbook/index.ts";
import { editRemake } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { allLanguages } from "../../app/languages.ts";
import { Choice } from "../../parts/index.ts";
import { writeUpWords as words } from "../../words/write-up.ts";

const options = allLanguages.map(({ code, name }) => ({
  value: code,
  label: <span lang={code}>{name}</span>,
}));

type Props = Readonly<{ remake: Remake; language: Language }>;

/** Which language the text is in, whatever the page is in. It is kept with the remake. */
export function TextLanguage({ remake, language }: Props) {
  const keep = (next: Language) =>
    void doAct({ ...editRemake(remake, ["episode", "language"], next), label: words.chooseLanguage }, null);
  return <Choice<Language> label={words.textIn} value={language} options={options} onValue={keep} />;
}
