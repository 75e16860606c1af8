import { useBook } from "../../store/index.ts";
import { format, words } from "../words/index.ts";

/** Whether what is on screen is on the disk, and since when. */
export function Saved() {
  const status = useBook((state) => state.status);
  const saving = useBook((state) => state.saving);
  if (status === "opening" || status === "failed") return null;
  if (status === "read-only") return words.saving.readOnly;
  if (saving.state === "saving") return words.saving.saving;
  if (saving.state === "failed") return <strong>{words.saving.failed}</strong>;
  return saving.at === null ? null : words.saving.saved(format.time(new Date(saving.at)));
}
