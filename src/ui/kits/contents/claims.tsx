import { useState } from "react";
import type { Claim, Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { setClaims } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { claimField, sourceOf } from "../view/claims.ts";
import { valueText } from "../view/conflicts.ts";
import { ClaimForm } from "./claim-form.tsx";
import styles from "./contents.module.css";

const text = kitsWords.line;

type Props = Readonly<{ kit: Kit; line: Line }>;

/** Who says what about a line, how surely, and when. */
export function Claims({ kit, line }: Props) {
  const claims = line.claims ?? [];
  const [editing, setEditing] = useState<number | "new" | null>(null);
  const put = (next: readonly Claim[]) => doAct(setClaims(kit, line, next), null);
  const keep = (at: number, claim: Claim) => {
    void put(claims.toSpliced(at, 1, claim));
    setEditing(null);
  };
  return (
    <section aria-label={text.claims}>
      <h3>{text.claims}</h3>
      {claims.length === 0 && <p className={styles.fact}>{text.claimsNone}</p>}
      <ul className={styles.claims}>
        {claims.map((claim, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: claims have no name of their own, and keep no state
          <li key={index}>
            {editing === index ? (
              <ClaimForm
                {...{ kit, line, claim }}
                onKeep={(next) => keep(index, next)}
                onClose={() => setEditing(null)}
              />
            ) : (
              <ClaimLine
                {...{ line, claim }}
                onChange={() => setEditing(index)}
                onRemove={() => put(claims.toSpliced(index, 1))}
              />
            )}
          </li>
        ))}
      </ul>
      {editing === "new" ? (
        <ClaimForm
          {...{ kit, line }}
          claim={null}
          onKeep={(claim) => keep(claims.length, claim)}
          onClose={() => setEditing(null)}
        />
      ) : (
        <Button kind="quiet" onClick={() => setEditing("new")}>
          {text.addClaim}
        </Button>
      )}
    </section>
  );
}

type LineProps = Readonly<{
  line: Line;
  claim: Claim;
  onChange: () => void;
  onRemove: () => Promise<boolean>;
}>;

function ClaimLine({ line, claim, onChange, onRemove }: LineProps) {
  const field = claimField(claim.field);
  const name = <span className="visually-hidden">{kitsWords.contents.about(field)}</span>;
  return (
    <>
      <span>{text.claim(field, valueText(line.supply.family, claim.field ?? "", claim.value))}</span>
      <span className={styles.fact}>{saidBy(claim)}</span>
      <Button kind="quiet" className={styles.change ?? ""} onClick={onChange}>
        {kitLogWords.claims.change}
        {name}
      </Button>
      <Button
        kind="quiet"
        className={styles.change ?? ""}
        onClick={(event) => void thenToHeading(event.currentTarget, onRemove)}
      >
        {kitsWords.prices.remove}
        {name}
      </Button>
    </>
  );
}

const saidBy = (claim: Claim): string =>
  [
    sourceOf(claim),
    ...(claim.sure ? [kitsWords.contents.sure[claim.sure]] : []),
    ...(claim.date ? [format.date(claim.date)] : []),
  ].join(", ");
