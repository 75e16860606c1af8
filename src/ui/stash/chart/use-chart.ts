import { startTransition, useState } from "react";
import type { ChartReading, Point } from "../../../engine/colour/index.ts";
import type { Fault } from "../../../engine/record/index.ts";
import { language } from "../../../store/index.ts";
import { type ChartReader, type PhotoFault, photoCaps, startChartReader } from "../../../workers/index.ts";
import { useThread } from "../use-thread.ts";
import { asked, firstMarks, type Marks, type Size } from "./view/marks.ts";

/** Why a file is not read: what speaks against it as a photo, or that it is gone since it was chosen. */
export type Refusal = PhotoFault | "unread";

/** A photo that is looked at: its name and size, and a smaller picture of it to draw. */
export type Photo = Size & Readonly<{ name: string; view: ImageBitmap }>;

/** The photo with its marks; `reading` while it is read, and why that failed where it did. */
export type Marking = Readonly<{
  at: "marking";
  photo: Photo;
  marks: Marks;
  reading: boolean;
  fault: Fault | null;
}>;

export type Result = Readonly<{ at: "read"; photo: Photo; marks: Marks; result: ChartReading }>;

export type Phase =
  | Readonly<{ at: "choosing"; cancelled: string | null }>
  | Readonly<{ at: "opening"; name: string }>
  | Readonly<{ at: "refused"; name: string; fault: Refusal }>
  | Marking
  | Result
  | Readonly<{ at: "done"; count: number; act: string }>;

const nothingYet: Phase = { at: "choosing", cancelled: null };

/** A photo of a swatch chart on its way to colours. Its pixels are held by the thread that reads it, and nowhere else. */
export function useChart() {
  const [phase, setPhase] = useState<Phase>(nothingYet);
  const { held: reader, turn, stop } = useThread<ChartReader>();

  async function take(file: File): Promise<void> {
    const { name } = file;
    stop();
    const mine = turn.current;
    const refuse = (fault: Refusal) => {
      if (turn.current !== mine) return;
      stop();
      setPhase({ at: "refused", name, fault });
    };
    if (file.size > photoCaps.bytes) return refuse("too-large"); // not even taken into memory
    setPhase({ at: "opening", name });
    const started = startChartReader();
    reader.current = started;
    started.whenLost(() => refuse("lost"));
    const opened = await started.ask.open(file).catch(() => ({ ok: false, fault: "unread" }) as const);
    if (!opened.ok) return refuse(opened.fault);
    if (turn.current !== mine) return opened.view.close();
    const { width, height, view } = opened;
    const photo = { name, width, height, view };
    setPhase({ at: "marking", photo, marks: firstMarks(photo), reading: false, fault: null });
  }

  async function read(marking: Marking): Promise<void> {
    const said = asked(marking.marks);
    const ask = reader.current?.ask;
    if (!said || !ask) return;
    const mine = turn.current;
    setPhase({ ...marking, reading: true, fault: null });
    const answer = await ask.read(said, language);
    if (turn.current !== mine || !answer) return;
    const { photo, marks } = marking;
    // Dozens of swatches are drawn for it: bit by bit, so that the page stays free.
    if (answer.ok) startTransition(() => setPhase({ at: "read", photo, marks, result: answer.value }));
    else setPhase({ ...marking, reading: false, fault: answer.fault });
  }

  /** A first guess at bare paper, where the marks allow one. */
  const guessPaper = async ({ marks }: Marking): Promise<Point | null> => {
    const said = asked(marks);
    return (said && (await reader.current?.ask.paperSpot(said))) ?? null;
  };

  const closeView = () => {
    if (phase.at === "marking" || phase.at === "read") phase.photo.view.close();
  };
  const leave = (next: Phase) => {
    closeView();
    stop();
    setPhase(next);
  };
  const nameNow = (): string | null =>
    phase.at === "opening" ? phase.name : phase.at === "marking" ? phase.photo.name : null;

  return {
    phase,
    take: (file: File) => {
      closeView();
      return take(file);
    },
    cancel: () => leave({ at: "choosing", cancelled: nameNow() }),
    mark: (change: (marks: Marks) => Marks) =>
      setPhase((now) => (now.at === "marking" ? { ...now, marks: change(now.marks), fault: null } : now)),
    read,
    guessPaper,
    markAnew: ({ photo, marks }: Result) =>
      setPhase({ at: "marking", photo, marks, reading: false, fault: null }),
    finish: (count: number, act: string) => leave({ at: "done", count, act }),
    startAgain: () => setPhase(nothingYet),
  };
}

export type Chart = ReturnType<typeof useChart>;
