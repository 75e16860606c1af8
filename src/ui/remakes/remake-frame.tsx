import { type ReactNode, useMemo } from "react";
import { type Act, useOffer } from "../app/acts.ts";
import { go } from "../app/navigate.ts";
import { type RemakeTab, remakeTabs } from "../app/route.ts";
import { ButtonLink, Empty, Page } from "../parts/index.ts";
import { words as common, format } from "../words/index.ts";
import { remakeWords as words } from "../words/remakes.ts";
import styles from "./remake-frame.module.css";
import { promptsOf } from "./view/prompts.ts";
import { kitTitle, type Subject } from "./view/solve.ts";

type Props = Readonly<{
  subject: Subject;
  tab: RemakeTab;
  lead: ReactNode;
  leadMore?: ReactNode;
  children: ReactNode;
}>;

/** One remake: its kit's name, its four pages as tabs, and the prompt in sight on each. */
export function RemakeFrame({ subject, tab, lead, leadMore, children }: Props) {
  const { kit, remake } = subject;
  useOffer(useMemo(() => pagesOf(remake.id, kitTitle(kit)), [remake.id, kit]));
  return (
    <Page
      place={common.places.remakes}
      title={kitTitle(kit)}
      tabs={remakeTabs.map((name) => ({
        label: words.tabs[name],
        to: { name: "remake", id: remake.id, tab: name } as const,
        current: name === tab,
      }))}
      margin={
        <>
          <p>{words.begun(format.date(remake.started))}</p>
          {remake.finished && <p>{words.finished(format.date(remake.finished))}</p>}
          <p>{words.kitOf(format.month(kit.period))}</p>
        </>
      }
      note={promptsOf(subject).map((text) => (
        <p key={text} className={styles.prompt}>
          {words.prompt(text)}
        </p>
      ))}
      lead={lead}
      leadMore={leadMore}
    >
      {children}
    </Page>
  );
}

/** The remake's pages, by name from the search field. */
const pagesOf = (id: string, title: string): readonly Act[] =>
  remakeTabs.map((tab) => ({
    name: words.tabs[tab],
    fact: title,
    run: () => go({ name: "remake", id, tab }),
  }));

/** A remake that is not in the book. */
export function NoRemake() {
  return (
    <Page place={common.places.remakes} title={words.gone.title}>
      <Empty
        title={words.gone.text}
        act={<ButtonLink to={{ name: "remakes" }}>{words.gone.act}</ButtonLink>}
      />
    </Page>
  );
}
