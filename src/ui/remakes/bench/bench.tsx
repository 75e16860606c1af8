import { useCallback, useMemo } from "react";
import { removeRemake } from "../../../store/index.ts";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { go } from "../../app/navigate.ts";
import { Button, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import { RemakeFrame } from "../remake-frame.tsx";
import { benchLead, notesOf } from "../view/bench.ts";
import { kitTitle, type Subject } from "../view/solve.ts";
import { Basics } from "./basics.tsx";
import { Bends } from "./bends.tsx";
import { Prompts } from "./prompts.tsx";
import { ShownOnly } from "./shown-only.tsx";
import { Steps } from "./steps.tsx";

const words = remakeWords.bench;

/** The bench: the prompt in sight, steps as they happen, what was added, and rules bent aloud. */
export function Bench({ subject }: Readonly<{ subject: Subject }>) {
  const { lead, more } = benchLead(subject);
  return (
    <RemakeFrame subject={subject} tab="bench" lead={lead} leadMore={more}>
      <Prompts subject={subject} />
      <Steps subject={subject} />
      <Basics subject={subject} />
      <ShownOnly subject={subject} />
      <Bends subject={subject} />
      <Notes subject={subject} />
      <End subject={subject} />
    </RemakeFrame>
  );
}

function Notes({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  return (
    <Section title={words.notes}>
      <KeptField
        label={words.notesLabel}
        hint={words.notesHint}
        lines={4}
        value={notesOf(remake)}
        read={readText}
        onKeep={(text) => void doAct(changeField(remake, "notes", text, remakeWords.acts.notes), null)}
      />
    </Section>
  );
}

function End({ subject: { kit, remake } }: Readonly<{ subject: Subject }>) {
  const remove = useCallback(() => {
    go({ name: "remakes" });
    void doAct(removeRemake(remake, kit), remakeWords.list.removed(kitTitle(kit)));
  }, [kit, remake]);
  useOffer(useMemo(() => [{ name: words.removeRemake, run: remove }], [remove]));
  return (
    <Section title={words.end}>
      <Button onClick={remove}>{words.removeRemake}</Button>
    </Section>
  );
}
