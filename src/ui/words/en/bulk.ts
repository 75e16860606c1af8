/** The words of changing several things of the Stash at once, in English. Counts come in as printed. */
export const bulkWords = {
  changeTitle: (count: string) => (count === "1" ? "Change 1 thing" : `Change ${count} things`),
  changeText: "What you fill in here becomes the same for all of them. What you leave alone stays as it is.",
  changeAct: (count: string) => (count === "1" ? "Change 1 thing" : `Change ${count} things`),
  changeThem: "Change them",
  nothingYet: "Fill in something that is to change first",
  leave: "Leave them as they are",
  asIs: "as it is",
  differ: "they differ now",
  differing: (label: string) => `${label} (they differ now)`,
  paidEach: "for each of them",
  tagsOn: "Tags to put on all",
  tagsOff: "Tags to take off",

  removeTitle: (count: string) =>
    count === "1" ? "Remove 1 thing from the stash?" : `Remove ${count} things from the stash?`,
  removeAct: (count: string) => (count === "1" ? "Remove it" : `Remove all ${count}`),
  keep: "Keep them",
  andMore: (count: string) => `and ${count} more`,
  inRemakes: (count: number) =>
    count === 1
      ? "They have parts in 1 remake, which will lack them."
      : `They have parts in ${count} remakes, which will lack them.`,
  twinsOf: (count: number) =>
    count === 1
      ? "1 other thing is their twin, and stays."
      : `${count} other things are their twins, and stay.`,
  canUndo: "You can undo this, and everything is set aside as it was.",
};
