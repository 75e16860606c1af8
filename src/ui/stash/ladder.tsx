import { type HueGroup, hueGroups } from "../../engine/colour/index.ts";
import { useAddressValue } from "../app/navigate.ts";
import { Button, classes } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import styles from "./ladder.module.css";
import { Rungs } from "./rungs.tsx";
import { cellKey, hueCounts, type Layout, type Shown, type Slot } from "./view/by-colour.ts";

type Hue = HueGroup | "rest";
type Props = Readonly<{ layout: Layout; onOpen: (cell: string) => void }>;

const hueName = (hue: Hue): string => (hue === "rest" ? words.restShort : words.hues[hue]);

/** On a phone: one hue at a time, from light to dark. */
export function Ladder({ layout, onOpen }: Props) {
  const [asked, setHue] = useAddressValue("hue");
  const counts = new Map<Hue, number>([...hueCounts(layout), ["rest", layout.rest.fitting]]);
  const hues: readonly Hue[] = [...hueGroups, "rest"];
  const fullest = hues.find((hue) => (counts.get(hue) ?? 0) > 0) ?? "reds";
  const hue = hues.find((one) => one === asked) ?? fullest;
  const steps =
    hue === "rest"
      ? [{ key: "rest", title: "", ...layout.rest }]
      : layout.cells.map((row) => {
          const cell = row.find((one) => one.hue === hue);
          const band = row[0]?.band ?? "middling";
          return {
            key: cellKey(hue, band),
            title: words.bands[band],
            slots: cell?.slots ?? [],
            more: cell?.more ?? 0,
          };
        });
  return (
    <>
      <fieldset className={styles.hues}>
        <legend className="visually-hidden">{words.hue}</legend>
        {hues.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === hue}
            className={classes(styles.hue, one === hue && styles.current)}
            onClick={() => setHue(one)}
          >
            {hueName(one)} <span className={styles.count}>{format.count(counts.get(one) ?? 0)}</span>
          </button>
        ))}
      </fieldset>
      {steps.map(({ key, title, slots, more }) => (
        <Step key={key} title={title} slots={slots} more={more} onOpen={() => onOpen(key)} />
      ))}
    </>
  );
}

type StepProps = Readonly<{ title: string; slots: readonly Slot[]; more: number; onOpen: () => void }>;

function Step({ title, slots, more, onOpen }: StepProps) {
  const fitting = slots.filter(({ fits }) => fits);
  const others = slots.filter(({ fits }) => !fits);
  if (slots.length === 0) return null;
  return (
    <section className={styles.step}>
      {title && <h2 className={styles.title}>{title}</h2>}
      <Rungs slots={fitting} />
      {others.length > 0 && (
        <p className={styles.others}>
          {others.map(({ item, hex }) => (
            <span
              key={item.id}
              className={styles.dot}
              style={hex === null ? undefined : { backgroundColor: hex }}
            />
          ))}
          {words.others(others.length)}
        </p>
      )}
      {more > 0 && (
        <Button kind="quiet" onClick={onOpen}>
          {words.moreHere(more)}
        </Button>
      )}
    </section>
  );
}

type NearestProps = Readonly<{ near: Shown; onOpen: () => void }>;

/** On a phone, where a colour was typed: what is close to it, nearest first. */
export function NearestFirst({ near, onOpen }: NearestProps) {
  if (near.fitting === 0) return <p>{words.notFound}</p>;
  return (
    <div className={styles.step}>
      <Rungs slots={near.slots} />
      {near.more > 0 && (
        <Button kind="quiet" onClick={onOpen}>
          {words.moreHere(near.more)}
        </Button>
      )}
    </div>
  );
}
