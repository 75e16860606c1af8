import { useEffect, useMemo, useRef } from "react";
import { useOffer } from "../../app/acts.ts";
import { useKey } from "../../app/keys.ts";
import { useAddressValue } from "../../app/navigate.ts";
import { PalettePicture } from "../../palette/palette-picture.tsx";
import { ButtonLink, Empty } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { RemakeFrame } from "../remake-frame.tsx";
import { useStandInActs } from "../use-stand-ins.ts";
import { useWashed } from "../use-washed.ts";
import { type Subject, solve } from "../view/solve.ts";
import { type StandInsView, standInsView, type Way } from "../view/stand-ins.ts";
import { Fetch } from "./fetch.tsx";
import { Rows } from "./rows.tsx";
import { Rules } from "./rules.tsx";
import { Ways } from "./ways.tsx";

const words = remakeWords.standIns;

const playersOf = ({ rows }: StandInsView) =>
  rows.map(({ line, standIn }) => ({ line, stash: standIn?.item.id ?? null }));

/** The row that has the focus, by its line. */
const focusedLine = (): string | null =>
  document.activeElement?.closest<HTMLElement>("[data-line]")?.dataset.line ?? null;

/** An act can take away the very button it was done with: the focus then goes to its row. */
function useFocusKept(changed: unknown): (line: string) => void {
  const acted = useRef<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks after the focus each time the rows have changed
  useEffect(() => {
    if (acted.current === null || document.activeElement !== document.body) return;
    const row = document.querySelector(`[data-line="${CSS.escape(acted.current)}"]`);
    row?.querySelector<HTMLElement>("button")?.focus();
  }, [changed]);
  return (line) => {
    acted.current = line;
  };
}

/** The reveal: every item of the kit beside its nearest match, why, and what else would do. */
export function StandIns({ subject }: Readonly<{ subject: Subject }>) {
  const [address, setWay] = useAddressValue("way");
  const way: Way = address === "palette" ? "palette" : "nearest";
  const match = useMemo(() => solve(subject), [subject]);
  const view = useMemo(() => standInsView(subject, match, way), [subject, match, way]);
  const acts = useStandInActs(subject, match);
  const washed = useWashed(useMemo(() => playersOf(view), [view]));
  const noteFocus = useFocusKept(view);
  const { hasOwnPicks } = view;
  const offered = useMemo(
    () => [
      ...(hasOwnPicks ? [{ name: words.chooseAllAgain, run: () => void acts.allAgain() }] : []),
      { name: words.nearest, run: () => setWay(null) },
      { name: words.palette, run: () => setWay("palette") },
    ],
    [hasOwnPicks, acts, setWay],
  );
  useOffer(offered);
  useKey("n", () => {
    const row = view.rows.find(({ line }) => line === focusedLine());
    const line = subject.kit.lines?.find(({ id }) => id === row?.line);
    if (row?.next && line) void acts.take(line, row.next.stash);
  });
  if (view.rows.length === 0) return <NothingYet subject={subject} />;
  return (
    <RemakeFrame subject={subject} tab="stand-ins" lead={view.lead} leadMore={view.leadMore}>
      <Rules subject={subject} acts={acts} />
      <Ways view={view} way={way} acts={acts} onWay={(next) => setWay(next === "palette" ? next : null)} />
      <Rows subject={subject} match={match} rows={view.rows} acts={acts} washed={washed} onAct={noteFocus} />
      <Fetch subject={subject} match={match} acts={acts} />
      <PalettePicture rows={view.rows} />
    </RemakeFrame>
  );
}

function NothingYet({ subject }: Readonly<{ subject: Subject }>) {
  return (
    <RemakeFrame subject={subject} tab="stand-ins" lead={null}>
      <Empty
        title={words.emptyTitle}
        act={
          <ButtonLink kind="primary" to={{ name: "kit", id: subject.kit.id, tab: "contents" }}>
            {words.emptyAct}
          </ButtonLink>
        }
      >
        {words.emptyText}
      </Empty>
    </RemakeFrame>
  );
}
