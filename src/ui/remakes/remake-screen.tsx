import { useMemo } from "react";
import { useBook } from "../../store/index.ts";
import type { RemakeTab } from "../app/route.ts";
import { Bench } from "./bench/bench.tsx";
import { NoRemake } from "./remake-frame.tsx";
import { StandIns } from "./stand-ins/stand-ins.tsx";
import { Verdict } from "./verdict/verdict.tsx";
import { subjectOf } from "./view/solve.ts";
import { WriteUp } from "./write-up/write-up.tsx";

const pages = { "stand-ins": StandIns, bench: Bench, verdict: Verdict, "write-up": WriteUp } as const;

/** One remake, on one of its four pages. */
export function RemakeScreen({ id, tab }: Readonly<{ id: string; tab: RemakeTab }>) {
  const book = useBook((state) => state.book);
  const subject = useMemo(() => subjectOf(book, id), [book, id]);
  const Shown = pages[tab];
  return subject ? <Shown subject={subject} /> : <NoRemake />;
}
