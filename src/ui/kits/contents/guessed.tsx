import { useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import { guessSpread, isGuessedColour } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { editLine } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import styles from "./contents.module.css";
import { FromPhoto } from "./from-photo.tsx";

const text = kitLogWords.guess;

type Props = Readonly<{ kit: Kit; line: Line }>;

/** How far a colour that was guessed from its name may be off, and a photo that gives a better one. */
export function Colouring({ kit, line }: Props) {
  const { colour } = line.supply;
  const [picking, setPicking] = useState(false);
  const take = async (hex: string) => {
    const next = { ...(colour?.name ? { name: colour.name } : {}), hex, from: "measured" as const };
    if (await doAct(editLine(kit, line, ["supply", "colour"], next))) setPicking(false);
  };
  return (
    <section aria-label={isGuessedColour(colour) ? text.title : kitLogWords.photo.pick}>
      {isGuessedColour(colour) && (
        <>
          <h3>{text.title}</h3>
          <p className={styles.fact}>{text.text(colour?.name ?? "", colour?.hex ?? "")}</p>
          <p className={styles.fact}>{text.spread(format.number(guessSpread, 0))}</p>
          <p className={styles.fact}>{text.better}</p>
        </>
      )}
      {picking ? (
        <FromPhoto onTake={take} onClose={() => setPicking(false)} />
      ) : (
        <Button kind="quiet" onClick={() => setPicking(true)}>
          {kitLogWords.photo.pick}
        </Button>
      )}
    </section>
  );
}
