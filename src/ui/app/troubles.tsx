import { backupFile, openLocalBook, photoSums, retry, type StoreFault, useBook } from "../../store/index.ts";
import { Button, ButtonLink, Fault, notify } from "../parts/index.ts";
import { format, words } from "../words/index.ts";
import { saveFile } from "./save-file.ts";
import styles from "./troubles.module.css";

/** What is wrong with the notebook itself, above every page for as long as it lasts. */
export function Troubles() {
  const status = useBook((state) => state.status);
  const fault = useBook((state) => state.fault);
  const saving = useBook((state) => state.saving);
  // Only while nothing is there: once a copy is back, nothing is amiss.
  const lastKnown = useBook((state) => (state.empty ? state.lastKnown : null));
  if (status === "opening") return null;
  const trouble = saving.state === "failed" ? saving.fault : fault;
  if (!trouble && !lastKnown) return null;
  return (
    <div className={styles.troubles}>
      {lastKnown && <Emptied records={lastKnown.records} at={lastKnown.at} />}
      {trouble && <Trouble fault={trouble} opens={status !== "failed"} />}
    </div>
  );
}

function Trouble({ fault, opens }: Readonly<{ fault: StoreFault; opens: boolean }>) {
  const waits = useBook((state) => state.saving.state === "failed");
  return (
    <Fault
      title={fault.problem}
      acts={
        <>
          {opens && <Button onClick={() => void saveCopy()}>{words.trouble.copy}</Button>}
          {(waits || !opens) && (
            <Button onClick={() => void (opens ? retry() : openLocalBook())}>{words.trouble.again}</Button>
          )}
          {!opens && <ButtonLink to={{ name: "keep-safe" }}>{words.trouble.restore}</ButtonLink>}
        </>
      }
    >
      {fault.safe} {fault.remedy}
    </Fault>
  );
}

function Emptied({ records, at }: Readonly<{ records: number; at: string }>) {
  return (
    <Fault
      title={words.trouble.emptied}
      acts={<ButtonLink to={{ name: "keep-safe" }}>{words.trouble.restore}</ButtonLink>}
    >
      {words.trouble.emptiedText(format.count(records), format.date(at.slice(0, 10)))}
    </Fault>
  );
}

/** A copy of all there is, also of what could not be kept. It needs no room on the device. */
async function saveCopy(): Promise<void> {
  if (photoSums(useBook.getState().book).length > 0) {
    try {
      const { saveWholeCopy } = await import("../keep-safe/save-copy.ts");
      return notify(await saveWholeCopy());
    } catch {
      // that part of the app cannot be had just now: the notebook alone can always be saved
    }
  }
  const file = backupFile(useBook.getState().book, new Date().toISOString());
  saveFile(file.name, file.text, file.type);
}
