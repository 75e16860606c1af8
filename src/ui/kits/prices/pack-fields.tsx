import type { Pack } from "../../../engine/price/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import { sizeWords } from "../../../engine/supply/index.ts";
import { KeptField, readNumber, readSize } from "../../supply-form/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";
import styles from "./prices.module.css";

const text = kitsWords.prices;

type Props = Readonly<{
  supply: Supply;
  pack: Pack;
  onPack: (pack: Pack) => void;
  fault: string | null;
}>;

/** How much another pack held, in the measure its kind is sold by. */
export function PackFields({ supply, pack, onPack, fault }: Props) {
  const number = (label: string, field: "count" | "ml" | "sheets") => (
    <KeptField
      label={label}
      keys="decimal"
      value={pack[field] ? String(pack[field]) : ""}
      read={(typed) => readNumber(typed, field !== "ml")}
      onKeep={(value) => onPack({ ...pack, [field]: value })}
    />
  );
  return (
    <>
      {(supply.family === "paint" || supply.family === "ink") && number(text.packMl, "ml")}
      {supply.family === "paper" && number(text.packSheets, "sheets")}
      {supply.family === "paper" && (
        <KeptField
          label={text.packSize}
          hint={supplyWords.sizeHint}
          value={pack.size ? sizeWords(pack.size) : ""}
          read={readSize}
          onKeep={(size) =>
            onPack({ ...pack, size: typeof size === "string" ? size : size && [size[0], size[1]] })
          }
        />
      )}
      {number(text.packPieces, "count")}
      {fault && (
        <p role="alert" className={styles.fact}>
          <strong>{fault}</strong>
        </p>
      )}
    </>
  );
}
