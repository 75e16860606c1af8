import { Button, Choice, Why } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { StandInsView, Way } from "../view/stand-ins.ts";
import styles from "./ways.module.css";

const words = remakeWords.standIns;

type Props = Readonly<{ view: StandInsView; way: Way; acts: StandInActs; onWay: (way: Way) => void }>;

/** How the stand-ins are chosen, each way with its figures; the palette's are taken by an act of their own. */
export function Ways({ view, way, acts, onWay }: Props) {
  const isOffer = way === "palette" && !view.same;
  return (
    <div className={styles.ways}>
      <Choice<Way>
        label={words.way}
        labelHidden
        value={way}
        onValue={onWay}
        options={[
          { value: "nearest", label: words.nearest, more: view.ways.nearest },
          { value: "palette", label: words.palette, more: view.ways.palette },
        ]}
      />
      {way === "palette" && (
        <p className={styles.offer}>
          <span>{isOffer ? words.takePaletteText(view.differs) : words.sameEitherWay}</span>
          {isOffer && (
            <Button
              kind="primary"
              onClick={async () => {
                if (await acts.takePalette()) onWay("nearest");
              }}
            >
              {words.takePalette}
            </Button>
          )}
        </p>
      )}
      <div className={styles.below}>
        <Why about={words.way} label={words.figuresWhy}>
          <p className={styles.text}>{words.figuresText}</p>
        </Why>
        {view.hasOwnPicks && (
          <Button kind="quiet" onClick={() => void acts.allAgain()}>
            {words.chooseAllAgain}
          </Button>
        )}
      </div>
    </div>
  );
}
