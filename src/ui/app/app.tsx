import { useEffect } from "react";
import { useBook } from "../../store/index.ts";
import { clearOldNotice } from "../parts/index.ts";
import { words } from "../words/index.ts";
import styles from "./app.module.css";
import { redoLast, undoLast } from "./do-act.ts";
import { Frame } from "./frame.tsx";
import { useChord } from "./keys.ts";
import { usePath, useRoute } from "./navigate.ts";
import { Screen } from "./places.tsx";
import type { Route } from "./route.ts";
import { Saved } from "./saved.tsx";
import { Troubles } from "./troubles.tsx";
import { useUnsavedGuard } from "./use-unsaved-guard.ts";

/** The whole app: the frame, and in it the screen of the present address. */
export function App() {
  const route = useRoute();
  const path = usePath();
  // biome-ignore lint/correctness/useExhaustiveDependencies: each address is a page of its own
  useEffect(clearOldNotice, [path]);
  useUnsavedGuard();
  useChord("z", false, () => void undoLast());
  useChord("z", true, () => void redoLast());
  useChord("y", false, () => void redoLast());
  return (
    <Frame route={route} saved={<Saved />}>
      <Troubles />
      <OpenScreen route={route} />
    </Frame>
  );
}

/** Pages that need no notebook, or mend one that does not open. */
const always: readonly Route["name"][] = ["keep-safe", "words", "parts", "nowhere"];

function OpenScreen({ route }: Readonly<{ route: Route }>) {
  const status = useBook((state) => state.status);
  if (status === "opening") {
    return (
      <p role="status" className={styles.opening}>
        {words.opening}
      </p>
    );
  }
  return status !== "failed" || always.includes(route.name) ? <Screen route={route} /> : null;
}
