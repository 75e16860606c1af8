import { useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { Page } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { words as common } from "../words/index.ts";
import { keepSafeWords as words } from "../words/keep-safe.ts";
import { Clear } from "./clear.tsx";
import { Copy } from "./copy.tsx";
import { Device } from "./device.tsx";
import { Health } from "./health.tsx";
import { History } from "./history.tsx";
import { useLastCopy } from "./last-copy.ts";
import { ListOut } from "./list-out.tsx";
import { Restore } from "./restore.tsx";
import { saveWholeCopy } from "./save-copy.ts";
import { Snapshots } from "./snapshots.tsx";
import { keptView } from "./view/state.ts";

/** Keep safe: copies out and in, going back, what was done, and how well this browser keeps it all. */
export function KeepSafePage() {
  const empty = useBook((state) => state.empty);
  const lasting = useBook((state) => state.lasting);
  const past = useBook((state) => state.past);
  const last = useLastCopy();
  const [written, setWritten] = useState<string | null>(null);
  const now = new Date().toISOString();
  const { lead, more } = keptView({ empty, lasting, past, lastCopy: last?.at ?? null, now });
  const save = async () => setWritten(await saveWholeCopy());
  useOffer(
    useMemo(
      () => [
        {
          name: actWords.saveCopy,
          also: actWords.saveCopyAlso,
          run: () => void saveWholeCopy().then(setWritten),
        },
      ],
      [],
    ),
  );
  return (
    <Page place={common.places.keepSafe} title={words.title} lead={lead} leadMore={more}>
      <Copy written={written} onSave={() => void save()} />
      <Restore />
      <ListOut />
      <Snapshots />
      <History />
      <Health />
      <Device />
      <Clear onSave={save} />
    </Page>
  );
}
