import type { Colour } from "../../engine/colour/index.ts";
import { isGuessedColour } from "../../engine/supply/index.ts";
import { words as frameWords } from "../words/index.ts";
import { supplyWords as words } from "../words/supply.ts";
import { ColourPicker } from "./colour-picker.tsx";
import { KeptField, readText } from "./kept-field.tsx";
import styles from "./supply-form.module.css";
import { hexOf, readColour, saidColour, withHex, withName } from "./view/colour-field.ts";

type Props = Readonly<{
  colour: Colour | null | undefined;
  onColour: (colour: Colour | undefined) => void;
}>;

/** A colour by its name and as it looks: typed, or picked with the browser's own picker. */
export function ColourFields({ colour, onColour }: Props) {
  return (
    <>
      <KeptField
        label={words.colourName}
        value={colour?.name ?? ""}
        read={readText}
        onKeep={(name) => onColour(withName(colour, name))}
      />
      <ColourCode colour={colour} onColour={onColour} />
    </>
  );
}

/** Only how it looks: hex beside the browser's picker, and what the colour is in words. */
export function ColourCode({ colour, onColour }: Props) {
  const hex = hexOf(colour);
  const said = saidColour(colour);
  const from =
    colour?.from === "measured" ? words.measured : isGuessedColour(colour) ? frameWords.colourGuessed : null;
  return (
    <div className={styles.colour}>
      <KeptField
        label={words.colourCode}
        hint={said ? [words.colourReads(said), from].filter(Boolean).join(", ") : words.colourHint}
        value={hex ?? ""}
        read={readColour}
        onKeep={(next) => onColour(withHex(colour, next))}
      />
      <ColourPicker hex={hex} onPick={(next) => onColour(withHex(colour, next))} />
    </div>
  );
}
