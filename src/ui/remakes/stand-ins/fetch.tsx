import { type MouseEvent, useMemo } from "react";
import type { KitMatch } from "../../../engine/match/index.ts";
import { useOffer } from "../../app/acts.ts";
import { thenToHeading } from "../../kits/focus-heading.ts";
import { Button, Section, Tick } from "../../parts/index.ts";
import { actWords } from "../../words/acts.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import { type FetchItem, fetchView, type Gone } from "../view/fetch.ts";
import type { Subject } from "../view/solve.ts";
import styles from "./fetch.module.css";

const words = remakeWords.standIns;

const place = "fetch";

const openFetch = {
  name: actWords.openFetch,
  run: () => document.querySelector<HTMLElement>(`#${place} input`)?.focus(),
};

/** What to fetch, place by place, ticked off at the shelf; what is found dry or used up is said there and solved anew. */
export function Fetch({
  subject,
  match,
  acts,
}: Readonly<{ subject: Subject; match: KitMatch; acts: StandInActs }>) {
  const view = useMemo(() => fetchView(subject, match), [subject, match]);
  const some = view.count > 0;
  useOffer(useMemo(() => (some ? [openFetch] : []), [some]));
  if (!some) return null;
  return (
    <Section title={words.fetch} act={view.sum} id={place}>
      <div className={styles.places}>
        {view.places.map(({ place, items }) => (
          <div key={place}>
            <h3 className={styles.place}>{place}</h3>
            <ul>
              {items.map((item) => (
                <Item key={item.id} item={item} acts={acts} />
              ))}
            </ul>
          </div>
        ))}
      </div>
    </Section>
  );
}

const markGone = (
  { id, name }: FetchItem,
  gone: Gone,
  acts: StandInActs,
  event: MouseEvent<HTMLElement>,
): Promise<void> => thenToHeading(event.currentTarget, () => acts.gone(id, name, gone));

const Item = ({ item, acts }: Readonly<{ item: FetchItem; acts: StandInActs }>) => (
  <li className={styles.item}>
    <Tick
      label={item.name}
      more={item.more}
      value={item.fetched}
      onValue={(on) => void acts.fetch(item.id, item.name, on)}
    />
    {item.gone && <GoneButton item={item} gone={item.gone} acts={acts} />}
  </li>
);

type GoneProps = Readonly<{ item: FetchItem; gone: Gone; acts: StandInActs }>;

const GoneButton = ({ item, gone, acts }: GoneProps) => (
  <Button
    kind="quiet"
    className={styles.gone ?? ""}
    onClick={(event) => void markGone(item, gone, acts, event)}
  >
    {words.gone[gone]}
    <span className="visually-hidden">{words.goneNamed(item.name)}</span>
  </Button>
);
