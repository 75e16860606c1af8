import type { StoreFault } from "./faults.ts";
import type { LastKnown } from "./marker.ts";
import type { Opened } from "./repository.ts";
import { report, shown } from "./saving.ts";
import { loadStacks } from "./stacks.ts";
import { type Session, showBook, showSaving } from "./state.ts";

/** What the marker knows, where the database is found never used: it has been emptied. */
const emptied = ({ tools }: Session, { revision }: Opened): LastKnown | null => {
  const known = tools.marker.read();
  return revision === 0 && known && known.records > 0 ? known : null;
};

function show(session: Session, opened: Opened): void {
  session.stored = opened.book;
  session.revision = opened.revision;
  showBook(session, shown(session));
  showSaving(session, { at: opened.savedAt });
  if (opened.readOnly) session.view.setState({ status: "read-only", fault: opened.readOnly });
}

/** Reads the book for the first time, then what can be undone. */
export async function load(session: Session, notice: StoreFault | null): Promise<StoreFault | null> {
  const opened = await session.repository.load();
  if (!opened.ok) return opened.fault;
  session.view.setState({
    status: "ready",
    fault: notice,
    lasting: session.repository.lasting,
    lastKnown: emptied(session, opened.value),
  });
  show(session, opened.value);
  return null;
}

/** Reads the book again after another tab has acted. */
export async function reload(session: Session): Promise<void> {
  const opened = await session.repository.load();
  if (opened.ok) show(session, opened.value);
  else report(session, opened.fault);
  await loadStacks(session);
}
