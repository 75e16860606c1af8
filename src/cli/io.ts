import type { Fault } from "../engine/record/index.ts";

/** All that the command line touches of the world outside. */
export type Io = Readonly<{
  /** @throws when the file cannot be read, or is not UTF-8 once `text` is asked for */
  read: (path: string) => Readonly<{ bytes: number; text: () => string }>;
  out: (text: string) => void;
  err: (text: string) => void;
  /** The date of today, ISO 8601. */
  today: string;
}>;

/** The command was called in a way it does not know, or with an id that does not exist: exit 2. */
export class Misuse extends Error {}

/** The input is at fault: exit 1 with every fault. */
export class AtFault extends Error {
  readonly faults: readonly Fault[];
  constructor(faults: readonly Fault[]) {
    super("the input is at fault");
    this.faults = faults;
  }
}
