import type { Remake } from "../../../engine/workbook/index.ts";
import { editRemake } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Choice, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import styles from "../entries.module.css";
import { printTags, readTags } from "../view/tags.ts";
import { Links } from "./links.tsx";

const words = remakeWords.writeUp;

type Disclosure = NonNullable<NonNullable<Remake["episode"]>["disclosure"]>;

// From a literal we wrote, whose keys are the schema's own words.
const disclosures = (Object.keys(words.disclosures) as Disclosure[]).map((value) => ({
  value,
  label: words.disclosures[value],
  more: words.disclosuresMore[value],
}));

/** What the episode is called, how the supplies came, tags and links. */
export function Episode({ remake }: Readonly<{ remake: Remake }>) {
  const episode = remake.episode ?? {};
  const keep = (field: string, value: unknown) =>
    void doAct({ ...editRemake(remake, ["episode", field], value), label: remakeWords.acts.episode }, null);
  return (
    <Section title={words.episode}>
      <div className={styles.stack}>
        <KeptField
          label={words.title}
          value={episode.title ?? ""}
          read={readText}
          onKeep={(title) => keep("title", title)}
        />
        <Choice<Disclosure>
          label={words.disclosure}
          hint={words.disclosureHint}
          value={episode.disclosure ?? null}
          options={disclosures}
          onValue={(disclosure) => keep("disclosure", disclosure)}
        />
        <KeptField
          label={words.tags}
          hint={words.tagsHint}
          value={printTags(episode.tags)}
          read={(text) => ({ ok: true, value: readTags(text) })}
          onKeep={(tags) => keep("tags", tags ?? [])}
        />
        <Links links={episode.links ?? []} onKeep={(links) => keep("links", links)} />
      </div>
    </Section>
  );
}
