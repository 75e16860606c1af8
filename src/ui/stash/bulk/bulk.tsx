import type { StashItem } from "../../../engine/supply/index.ts";
import { ChangeMany } from "./change-many.tsx";
import { RemoveMany } from "./remove-many.tsx";

type Props = Readonly<{ act: "change" | "remove"; items: readonly StashItem[]; onClose: () => void }>;

/** What can be done to several things at once. */
export const Bulk = ({ act, items, onClose }: Props) =>
  act === "change" ? (
    <ChangeMany items={items} onClose={onClose} />
  ) : (
    <RemoveMany items={items} onClose={onClose} />
  );
