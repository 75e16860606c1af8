const changes = (count: number): string => (count === 1 ? "one change" : `${count} changes`);

/** The words of Keep safe, in English. */
export const keepSafeWords = {
  title: "Keep safe",

  state: {
    empty: "There is nothing to keep yet.",
    never: "No copy has been saved from this browser yet.",
    notKept: "Nothing here outlives this tab.",
    fresh: (when: string) => `Your last copy, of ${when}, has everything.`,
    since: (when: string, count: number) => `Your last copy is of ${when}, ${changes(count)} ago.`,
    where: "Everything stays in this browser, on this device. Only a copy somewhere else outlives it.",
    due: "Time for another one.",
    dueFirst: "Time for one.",
    notKeptMore:
      "This browser keeps nothing: a private window, or storage is switched off. Save a copy before you close it.",
    at: (date: string, time: string) => `${date}, ${time}`,
  },

  copy: {
    title: "Save a copy",
    text: "One file with everything in it, photos too. Keep it somewhere else: on a stick, on another device, in a folder that is copied elsewhere.",
    act: "Save a copy",
    written: (name: string, records: number, size: string) =>
      `Written: ${name}, ${records === 1 ? "1 record" : `${records} records`}, ${size}.`,
    writtenWith: (name: string, records: number, photos: number, size: string) =>
      `Written: ${name}, ${records === 1 ? "1 record" : `${records} records`}, ${photos === 1 ? "1 photo" : `${photos} photos`}, ${size}.`,
    missing: (count: number) =>
      count === 1
        ? "1 photo is not on this device, so it is not in it."
        : `${count} photos are not on this device, so they are not in it.`,
    checked: "It was read back and is whole.",
    faulty: "It was written, but reading it back finds faults. Keep an older copy too.",
    name: "What this workbook is called",
    nameHint: "it goes into the name of the file",
    offer: "Save a copy of everything",
  },

  restore: {
    title: "Bring a copy back",
    text: "Nothing changes until you have seen what is in it and said yes.",
    pick: "Choose a copy",
    dialog: (when: string | null) => (when === null ? "Restore this copy?" : `Restore the copy of ${when}?`),
    act: "Restore it",
    keep: "Keep what is here",
    instead:
      "It takes the place of what is here. What is here now is set aside first, and Undo brings it back.",
    damaged:
      "It was changed after it was written, by hand or by accident. It is whole, but may not be what you saved.",
    odd: (count: number) => (count === 1 ? "One thing in it looks odd:" : `${count} things in it look odd:`),
    label: (name: string) => `Restore ${name}`,
    done: (records: number) => `The copy is restored: ${records === 1 ? "1 record" : `${records} records`}`,
    refused: (name: string) => `${name} was not restored`,
    refusedText: (count: number) =>
      count === 1
        ? "One thing in it is wrong. Nothing here was changed."
        : `${count} things in it are wrong. Nothing here was changed.`,
    faults: "What is wrong, and where",
    remedy: (text: string) => `What would be right: ${text}.`,
    another: "Choose another file",
    failed: "Nothing was restored",
    notText: {
      problem: "not text in UTF-8",
      remedy: "choose a copy that Understudy wrote, or save the file again as UTF-8",
    },
    unread: { problem: "it cannot be read", remedy: "choose it again, or copy it to this device first" },
    archive: {
      "too-large": {
        problem: "an archive larger than 320 MB",
        remedy: "choose a copy that Understudy wrote",
      },
      bomb: {
        problem: "unpacked it would be far larger than it looks",
        remedy: "choose a copy that Understudy wrote",
      },
      damaged: {
        problem: "a damaged archive",
        remedy: "copy it to this device again, or choose an older copy",
      },
      locked: { problem: "an archive with a password", remedy: "unpack it and choose the workbook in it" },
      hostile: {
        problem: "an archive with names that point out of it, as only harmful ones have",
        remedy: "choose a copy that Understudy wrote",
      },
      "no-copy": {
        problem: "an archive without a workbook in it",
        remedy: "choose a copy that Understudy wrote",
      },
    },
    leftOut: (count: number) =>
      count === 1
        ? "1 photo in it is damaged, or not as this app keeps photos, and is left out."
        : `${count} photos in it are damaged, or not as this app keeps photos, and are left out.`,
    missing: (count: number) =>
      count === 1
        ? "1 photo that it names is not in the file. If it is on this device, it will still show."
        : `${count} photos that it names are not in the file. Those that are on this device will still show.`,
  },

  counts: {
    caption: "What is here beside what is in the copy",
    what: "What",
    here: "Here now",
    there: "In the copy",
    stash: "Things in the stash",
    kits: "Kits",
    lines: "Lines of kits",
    remakes: "Remakes",
    markets: "Markets",
    rates: "Days of rates",
    shops: "Shops",
    parcels: "Parcels",
    kinships: "Links of products",
    photos: "Photos",
    requests: "Requests",
  },

  snapshots: {
    title: "Go back to a whole notebook",
    text: "Before anything large, all of it is set aside here. The last ten are kept.",
    none: "Nothing set aside yet",
    noneText:
      "Before you restore a copy, put in a sample or remove everything, all there is will be set aside here.",
    caption: "What was set aside, newest first",
    when: "When",
    before: "Before",
    records: "Records",
    act: "go back to this",
    about: (label: string) => `, as it was before: ${label}`,
    done: (label: string) => `Gone back to before: ${label}`,
  },

  history: {
    title: "What was done",
    none: "Nothing has been done yet",
    noneText: "Every change will stand here, with the time, and can be taken back in order.",
    caption: "Changes, newest first",
    when: "When",
    what: "What",
    how: "",
    undo: (label: string) => `Undo: ${label}`,
    redo: (label: string) => `Do again: ${label}`,
    more: "Show more",
    kinds: { do: "", undo: "taken back", redo: "done again" },
    unread: "The history cannot be read just now.",
  },

  health: {
    title: "This browser's storage",
    promised: "This browser has promised not to clear it by itself.",
    notPromised: "This browser has not promised to keep it: short of room, it may clear it by itself.",
    unknown: "This browser does not say whether it will keep it.",
    ask: "Ask it to keep everything",
    granted: "It has promised to keep everything",
    denied:
      "It did not promise. Some do once a page is used often or put on the home screen. Until then, save copies.",
    used: (used: string, quota: string) => `${used} are used, of about ${quota} that there would be.`,
    usedOnly: (used: string) => `${used} are used.`,
    usedUnknown: "It does not say how much room is used.",
    clears: "Clearing this site's data in the browser, or removing the browser, takes all of it away.",
  },

  device: {
    title: "This device",
    language: "Words in",
    languageHint: "The page loads anew; nothing is lost by it.",
    numbers: "Numbers and dates",
    numbersHint: "Amounts keep their own currency.",
    asBrowser: (sample: string) => `As this browser: ${sample}`,
    keys: "Single keys do things",
    keysMore: "such as / for the search field; turn it off if you speak or dictate to your device",
    chord:
      "Ctrl Z and Ctrl Shift Z always take back and do again, and Ctrl / goes to the search field; Cmd will do as well.",
  },

  clear: {
    title: "Remove everything",
    text: "Empties the notebook in this browser. Copies you have saved elsewhere are not touched.",
    act: "Remove everything",
    dialog: "Remove everything?",
    holds: (records: number) =>
      `${records === 1 ? "One record goes" : `${records} records go`}. It is set aside as a snapshot first, and Undo brings it back.`,
    traces: "To leave nothing behind on this device, clear this site's data in the browser afterwards.",
    withCopy: "Save a copy, then remove",
    without: "Remove without a copy",
    keep: "Keep everything",
    label: "Remove everything",
    done: "Everything is removed",
    nothing: "There is nothing to remove.",
  },

  bytes: (figure: string, unit: "B" | "kB" | "MB" | "GB") => `${figure} ${unit}`,
};
