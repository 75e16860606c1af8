/** The word an act's name begins with, and the same as something done. */
const doneBy: ReadonlyMap<string, string> = new Map([
  ["Add", "Added"],
  ["Bring", "Brought"],
  ["Change", "Changed"],
  ["Choose", "Chose"],
  ["Clear", "Cleared"],
  ["Give", "Gave"],
  ["Keep", "Kept"],
  ["Leave", "Left"],
  ["Link", "Linked"],
  ["Log", "Logged"],
  ["Mark", "Marked"],
  ["Merge", "Merged"],
  ["Move", "Moved"],
  ["Name", "Named"],
  ["Note", "Noted"],
  ["Remove", "Removed"],
  ["Restore", "Restored"],
  ["Start", "Started"],
  ["Take", "Took"],
  ["Unlink", "Unlinked"],
]);

/** An act's name as what was just done: "Log the kit …" reads "Logged the kit …". Others stay as they are. */
export function asDone(label: string): string {
  const [verb = ""] = label.split(" ", 1);
  return (doneBy.get(verb) ?? verb) + label.slice(verb.length);
}
