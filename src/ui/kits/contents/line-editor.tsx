import type { Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { editLine, moveLine, removeLine, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Tick } from "../../parts/index.ts";
import { KeptField, readNumber, readText, SupplyForm } from "../../supply-form/index.ts";
import { hasColour } from "../../supply-form/view/trait-fields.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { neighbours, noteOf, readWant, wantText } from "../view/line-fields.ts";
import { Claims } from "./claims.tsx";
import styles from "./contents.module.css";
import { Colouring } from "./guessed.tsx";
import { Settle } from "./settle.tsx";
import { Variants } from "./variants.tsx";

const text = kitsWords.line;

type Props = Readonly<{ kit: Kit; line: Line; onGone: () => void }>;

/** Every field of a line, each kept when it is left. */
export function LineEditor({ kit, line, onGone }: Props) {
  const keep = (path: readonly string[], value: unknown) =>
    void doAct(editLine(kit, line, path, value), null);
  return (
    <Band>
      <div className={styles.editor}>
        <SupplyForm supply={line.supply} onChange={(path, value) => keep(["supply", ...path], value)}>
          <KeptField
            label={text.qty}
            keys="numeric"
            value={String(line.qty ?? 1)}
            read={(typed) => readNumber(typed, true)}
            onKeep={(qty) => keep(["qty"], qty)}
          />
          <KeptField
            label={text.want}
            unit={text.wantUnit}
            keys="decimal"
            value={wantText(line.want)}
            read={readWant}
            onKeep={(want) => keep(["want"], want)}
          />
          <KeptField
            label={text.note}
            value={noteOf(line)}
            read={readText}
            onKeep={(note) => keep(["note"], note)}
          />
        </SupplyForm>
        <Tick
          label={text.exclusive}
          value={line.exclusive ?? false}
          onValue={(exclusive) => keep(["exclusive"], exclusive || undefined)}
        />
        {hasColour(line.supply.family) && <Colouring kit={kit} line={line} />}
        <Settle kit={kit} line={line} />
        <Claims kit={kit} line={line} />
        <Variants kit={kit} line={line} />
        <LineActs kit={kit} line={line} onGone={onGone} />
      </div>
    </Band>
  );
}

function LineActs({ kit, line, onGone }: Props) {
  const book = useBook((state) => state.book);
  const { before, afterNext, isFirst, isLast } = neighbours(kit.lines ?? [], line.id);
  const move = async (to: Line | null, button: HTMLElement) => {
    await doAct(moveLine(kit, line, to), null);
    button.focus(); // the browser lets go of it when its row moves
  };
  const remove = async () => {
    if (!(await doAct(removeLine(book, kit, line)))) return;
    onGone();
    document.querySelector<HTMLElement>("h1")?.focus();
  };
  return (
    <Acts>
      <Button notNow={isFirst && text.isFirst} onClick={(event) => move(before, event.currentTarget)}>
        {text.up}
      </Button>
      <Button notNow={isLast && text.isLast} onClick={(event) => move(afterNext, event.currentTarget)}>
        {text.down}
      </Button>
      <Button onClick={remove}>{text.remove}</Button>
    </Acts>
  );
}
