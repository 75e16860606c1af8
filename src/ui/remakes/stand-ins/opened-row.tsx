import { useState } from "react";
import type { LineMatch } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import { Button, Chooser } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import { type OtherView, openedView } from "../view/opened.ts";
import type { RowView } from "../view/rows.ts";
import type { Shelves } from "../view/solve.ts";
import type { StashOption } from "../view/stash-options.ts";
import { Compared } from "./compared.tsx";
import styles from "./opened-row.module.css";
import { Other } from "./other.tsx";

const words = remakeWords.standIns;

type Props = Readonly<{
  row: RowView;
  line: Line;
  match: LineMatch;
  shelves: Shelves;
  options: readonly StashOption[];
  acts: StandInActs;
  chooserId: string;
}>;

/** What `why?` opens: who else could play it, who is left out and why, and what was compared. */
export function OpenedRow({ row, line, match, shelves, options, acts, chooserId }: Props) {
  const view = openedView(line, match, row.standIn?.item.id ?? null, shelves);
  const others = { line, acts };
  return (
    <div className={styles.opened}>
      {view.runnersUp.length > 0 ? (
        <Others title={words.runnersUp} views={view.runnersUp} {...others} />
      ) : (
        <p className={styles.none}>{words.noRunners}</p>
      )}
      {view.leftOut.length > 0 && <Others title={words.outTitle} views={view.leftOut} {...others} />}
      <div className={styles.fields}>
        <Chooser
          id={chooserId}
          label={words.pickOther}
          hint={words.chooseFrom}
          value={null}
          options={options}
          onValue={(stash) => stash !== null && void acts.take(line, stash)}
        />
        {row.isOwn && (
          <KeptField
            label={words.note}
            hint={words.noteHint}
            value={row.ownNote}
            read={readText}
            onKeep={(note) => void acts.note(line, note ?? "")}
          />
        )}
      </div>
      {row.state === "filled" && (
        <Button kind="quiet" onClick={() => void acts.leaveOut(line)}>
          {words.leaveOut}
          <span className="visually-hidden">{words.swapFor(row.name)}</span>
        </Button>
      )}
      <Compared view={view} />
    </div>
  );
}

const shownAtFirst = 4;

type OthersProps = Readonly<{ title: string; views: readonly OtherView[]; line: Line; acts: StandInActs }>;

function Others({ title, views, line, acts }: OthersProps) {
  const [all, setAll] = useState(false);
  const shown = all ? views : views.slice(0, shownAtFirst);
  return (
    <div>
      <h4 className="visually-hidden">{title}</h4>
      <ul className={styles.others}>
        {shown.map((other) => (
          <Other key={other.item.id} other={other} line={line} acts={acts} />
        ))}
      </ul>
      {shown.length < views.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {words.more(views.length - shown.length)}
        </Button>
      )}
    </div>
  );
}
