import * as z from "zod/mini";

/** What was kept here last, remembered apart from the database: the browser may empty one and not the other. */
export type LastKnown = z.infer<typeof LastKnownSchema>;

const LastKnownSchema = z.object({
  /** Records over all lists, and of them the stash and the kits. */
  records: z.int(),
  stash: z.int(),
  kits: z.int(),
  /** When, ISO 8601 with time. */
  at: z.string(),
});

export type Marker = Readonly<{ read: () => LastKnown | null; write: (known: LastKnown) => void }>;

const key = "understudy.last-kept";

/** What `work` gives, or `otherwise` where the browser forbids or lacks local storage. */
function allowed<T>(work: () => T, otherwise: T): T {
  try {
    return work();
  } catch {
    return otherwise; // the marker is a courtesy; the data does not hang on it
  }
}

/** The marker in local storage. `storage` is asked for each time: merely naming it can be forbidden. */
export const localMarker = (storage: () => Pick<Storage, "getItem" | "setItem">): Marker => ({
  read: () =>
    allowed(() => {
      const parsed = LastKnownSchema.safeParse(JSON.parse(storage().getItem(key) ?? "null"));
      return parsed.success ? parsed.data : null;
    }, null),
  write: (known) => allowed(() => storage().setItem(key, JSON.stringify(known)), undefined),
});
