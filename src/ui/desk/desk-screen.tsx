import { lazy, Suspense } from "react";
import { useBook } from "../../store/index.ts";
import { FirstRun } from "./first-run.tsx";

const Desk = lazy(() => import("./desk.tsx").then((module) => ({ default: module.Desk })));

/** What is next; or, of an empty notebook, how to begin. */
export function DeskScreen() {
  const empty = useBook((state) => state.empty);
  if (empty) return <FirstRun />;
  return (
    <Suspense fallback={null}>
      <Desk />
    </Suspense>
  );
}
