import { useState } from "react";
import {
  Acts,
  Button,
  ButtonLink,
  Dialog,
  Empty,
  Fault,
  FaultList,
  NoticeBar,
  notify,
  Section,
} from "../parts/index.ts";
import { words } from "../words/index.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

const texts = sheet.blocks;

/** What interrupts, tells, waits or went wrong. */
export function Blocks() {
  const [open, setOpen] = useState(false);
  const [attempt, setAttempt] = useState(0);
  const close = () => setOpen(false);
  return (
    <Section title={texts.title}>
      <div className={styles.blocks}>
        <Empty
          title={texts.emptyTitle}
          act={
            <ButtonLink kind="quiet" to={{ name: "kits" }}>
              {texts.emptyAct}
            </ButtonLink>
          }
        >
          {texts.emptyText}
        </Empty>
        <Fault
          title={texts.faultTitle}
          acts={
            <>
              <Button>{texts.copy}</Button>
              <Button>{texts.again}</Button>
            </>
          }
        >
          {texts.faultText}
        </Fault>
        <NoticeBar text={texts.notice} undo={() => notify(texts.back)} onClose={() => undefined} />
        <SavedStates />
        <Acts>
          <Button onClick={() => setOpen(true)}>{texts.open}</Button>
          <Button onClick={() => notify(texts.notice, () => notify(texts.back))}>{texts.tell}</Button>
          <Button onClick={() => setAttempt(attempt + 1)}>{texts.check}</Button>
        </Acts>
        <FaultList attempt={attempt} faults={attempt > 0 ? theFaults : []} />
      </div>
      <Dialog
        open={open}
        title={texts.dialogTitle}
        onClose={close}
        acts={
          <>
            <Button kind="primary" onClick={close}>
              {texts.restore}
            </Button>
            <Button onClick={close}>{texts.keep}</Button>
          </>
        }
      >
        {texts.dialogText}
      </Dialog>
    </Section>
  );
}

const { saved, saving, failed, readOnly } = words.saving;

const SavedStates = () => (
  <div>
    <p>{texts.saved}</p>
    <ul className={styles.saved}>
      <li>{saved(texts.savedAt)}</li>
      <li>{saving}</li>
      <li>
        <strong>{failed}</strong>
      </li>
      <li>{readOnly}</li>
    </ul>
  </div>
);

const theFaults = ["parts-price", "parts-opened"].map((field, index) => ({
  field,
  message: texts.faults[index],
}));
