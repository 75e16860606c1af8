/** The words of the Remakes place, in English. */

const small = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A count in words as far as people write it so: "seven", "14". */
const count = (n: number): string => small[n] ?? String(n);

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
const things = (n: number, one: string, many: string): string => `${count(n)} ${n === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

/** A name inside a sentence: "flat brush" of "Flat brush". Names that begin with two capitals stay. */
const within = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.slice(0, 1).toLowerCase() + name.slice(1) : name;

const remakes = {
  tabs: { "stand-ins": "Stand-ins", bench: "Bench", verdict: "Verdict", "write-up": "Write-up" },
  begun: (date: string) => `Begun ${date}`,
  finished: (date: string) => `Finished ${date}`,
  kitOf: (month: string) => `Kit of ${month}`,
  prompt: (text: string) => (/[.!?…]$/.test(text) ? `Prompt: ${text}` : `Prompt: ${text}.`),
  gone: {
    title: "This remake is not here",
    text: "It may have been removed, or the address mistyped.",
    act: "See all remakes",
  },
  refused: (problem: string, remedy: string) => `Not done. ${capital(problem)} ${capital(remedy)}`,
  add: "Add",
  remove: "remove",
  removeNamed: (name: string) => `Remove ${name}`,

  acts: {
    leaveOut: (name: string) => `Leave out the ${within(name)}`,
    note: (name: string) => `Note something on ${within(name)}`,
    takePalette: "Use the stand-ins that keep the palette together",
    clearAll: "Choose every stand-in again",
    dried: (name: string) => `Mark ${within(name)} as dried out`,
    twins: (on: boolean) => (on ? "Let twins play their part" : "Keep twins on the shelf"),
    prompt: "Change the prompt",
    step: "Change a step",
    basics: "Change the basics",
    shown: "Change what is shown only",
    bends: "Change the rules bent",
    notes: "Change the notes",
    kitVerdict: "Give a verdict on the kit",
    finished: "Change the day it was finished",
    questions: "Change the questions",
    corrections: "Change the corrections",
    episode: "Change the episode",
    publish: "Keep the published version",
  },

  list: {
    lead: (open: number, done: number) =>
      open === 0
        ? `${capital(things(done, "remake", "remakes"))} finished, none under way.`
        : `${capital(things(open, "remake", "remakes"))} under way${done > 0 ? `, ${count(done)} finished` : ""}.`,
    caption: "Remakes",
    kit: "Kit",
    maker: "Sent by",
    begun: "Begun",
    stands: "Where it stands",
    finished: (date: string) => `finished ${date}`,
    standIns: (filled: number, all: number) => `${filled} of ${all} have a stand-in`,
    verdicts: (said: number, all: number) => `${said} of ${all} judged`,
    published: (date: string) => `published ${date}`,
    noLines: "contents not logged yet",
    emptyTitle: "Your remakes will be here",
    emptyText:
      "A remake takes up a kit with what is on your own shelves: stand-ins, the bench, a verdict, the write-up.",
    noKitsTitle: "A remake begins with a kit",
    noKitsText: "Log what a kit held, and it can be taken up here.",
    toKits: "Log a kit",
    startTitle: "Take up a kit",
    whichKit: "Kit",
    whichKitHint: "any kit you have logged",
    started: "Begun on",
    startedHint: "What was bought after this day stays out.",
    start: "Start the remake",
    noKit: "No kit is chosen. Choose one from the list.",
    noDate: "The day is missing. Write it as 30 April 2026.",
    begunSaid: (kit: string) => `A remake of ${kit} is begun.`,
    removed: (kit: string) => `The remake of ${kit} is removed.`,
  },

  standIns: {
    lead: (filled: number, all: number) =>
      filled === all
        ? all === 1
          ? "The one item has a stand-in."
          : `All ${count(all)} have a stand-in.`
        : `${capital(count(filled))} of ${count(all)} have a stand-in.`,
    gaps: (names: readonly string[]) =>
      names.length > 2
        ? `Nothing close for ${count(names.length)} of them.`
        : `Nothing close for ${listed(names.map((name) => `the ${within(name)}`))}.`,
    leftOpen: (names: readonly string[]) =>
      names.length > 2
        ? `${capital(count(names.length))} left out on purpose.`
        : `Left out on purpose: ${listed(names.map(within))}.`,
    emptyTitle: "The stand-ins will be here",
    emptyText: "Log what the kit held, and each item gets its nearest match from your shelves.",
    emptyAct: "Log its contents",
    way: "How they are chosen",
    nearest: "Nearest, item by item",
    palette: "Keep the palette together",
    figures: (near: string, apart: string | null, steps: string | null) =>
      [
        `${near} of 100`,
        apart === null ? null : `colours ${apart} apart`,
        steps === null ? null : `steps ${steps} off`,
      ]
        .filter((part) => part !== null)
        .join(", "),
    figuresWhy: "why these figures?",
    figuresText:
      "“Of 100” is how near the stand-ins are on average, a gap counting 0. “Apart” is how far each colour is from its own in the kit, on average. “Steps off” is how much the steps between the kit's colours have changed: three reds that were distinct should stay so. Apart and off are CIEDE2000 differences; under 2 shows only side by side.",
    sameEitherWay: "Both ways come to the same stand-ins.",
    takePalette: "Use these stand-ins",
    takePaletteText: (lines: string) => `Shown, not yet chosen. Different from the nearest: ${lines}.`,
    tookPalette: "The palette's stand-ins are now your picks.",
    inKit: "In the kit",
    mine: "From my shelves",
    nextKey: "N",
    nextBest: "next best",
    howNear: "How near",
    line: (numbers: readonly number[]) =>
      numbers.length === 1 ? `line ${numbers[0]}` : `lines ${listed(numbers.map(String))}`,
    pieces: (n: number) => `${n} of these`,
    nothingClose: "Nothing close",
    gapWord: "gap",
    leftOut: "Left out",
    leftOutFact: "on purpose",
    gapNearest: (name: string, figure: number) => `The nearest, ${within(name)}, comes to ${figure} of 100.`,
    gapOut: (name: string, reason: string) => `${name} comes close, but is left out: ${reason}.`,
    gapNone: "Nothing of its kind on your shelves.",
    leaveOut: "Leave it out",
    pickAnyway: "Pick one anyway",
    pickOther: "Pick something else",
    chooseFrom: "From the whole stash",
    chooseAgain: "Let it choose again",
    chooseAllAgain: "Let it choose everything again",
    next: (name: string, figure: string, worse: number) =>
      `Next: ${within(name)}, ${figure}; ${worse === 0 ? "no worse in all" : `${worse} worse in all`}.`,
    nextPlain: (name: string, figure: string) => `Next: ${within(name)}, ${figure}.`,
    swap: "swap",
    swapFor: (name: string) => `, ${name}`,
    yours: "Your pick.",
    instead: (name: string) => `Instead of ${within(name)}.`,
    lastResort: "Last resort: nothing else would do, so what the kit itself brought plays its own part.",
    mixedWith: (name: string, work: string | null) => `with ${within(name)}${work ? `: ${work}` : ""}`,
    judgedByLarger: "How near is judged by the larger part.",
    received: "You have had this kit before, so its own things and their twins stay on the shelf.",
    receivedTwins: "You have had this kit before, so its own things stay on the shelf; their twins may play.",
    twins: "Let twins play their part",
    twinsMore: "the same product under another label",
    runnersUp: "Others that could play it",
    noRunners: "Nothing else could play it.",
    outTitle: "Left out",
    use: "use this",
    takeNamed: (name: string) => `, ${name}`,
    useBent: "use it, and say so",
    notUsed: "not used",
    more: (n: number) => (n === 1 ? "1 more" : `${n} more`),
    out: {
      "received-before": "it came with this kit",
      "acquired-after": "it came after the kit was known or the remake begun",
      empty: "none left",
      dried: "dried out",
    },
    outLine: (reason: string) => `left out: ${reason}`,
    inUse: (number: number, name: string) => `plays line ${number}, ${within(name)}`,
    bends: {
      "acquired-after": (name: string) => `${name} came after the start.`,
      "received-before": (name: string) => `${name} came with this very kit.`,
    },
    compared: {
      caption: (name: string) => `What was compared with ${name}`,
      nearest: (name: string) => `The nearest, ${within(name)}:`,
      what: "What was compared",
      kit: "Kit",
      mine: "Mine",
      alike: "Alike",
      counts: "Counts",
      unknown: "not known",
      yes: "yes",
      no: "no",
      same: "It is the very same product, so there was nothing to compare.",
      twin: "It is the same product under another label, so there was nothing to compare.",
      nothing: "Nothing is known of the kit item that could be compared.",
      traits: (figure: string) => `${figure} for the traits`,
      family: (factor: string, mine: string, kit: string) => `then × ${factor}: ${mine} doing ${kit}’s work`,
      far: (factor: string) => `then × ${factor}: the colour is far off`,
      comes: (figure: number) => `which comes to ${figure} of 100`,
      allKnown: "All known on both sides.",
      partKnown: (share: number) =>
        `${share} in 100 of what counts is known on both sides; the rest counts half.`,
      noneKnown: "None of it is known of mine, so it counts half.",
    },
    note: "A note on this pick",
    noteHint: "goes into the write-up",
    moved: (lines: string) => `${capital(lines)} changed with it.`,
    picked: (number: number, name: string) => `Line ${number} now has ${within(name)}.`,
    pickedNone: (number: number) => `Line ${number} now has nothing close.`,
    leftOutSaid: (number: number) => `Line ${number} is left out.`,
    allCleared: "Every line has its nearest again.",
    twinsOn: "Twins may play their part.",
    twinsOff: "Twins stay on the shelf.",

    fetch: "Fetch them",
    fetchedSome: (done: number, all: number) =>
      done === all
        ? `all ${count(all)} fetched`
        : `${done === 0 ? "none" : count(done)} of ${count(all)} fetched`,
    noPlace: "No place noted",
    forLine: (numbers: readonly number[]) =>
      numbers.length === 1 ? `line ${numbers[0]}` : `lines ${listed(numbers.map(String))}`,
    forBasics: "basics",
    forShown: "to show only",
    driedOut: "dried out",
    driedNamed: (name: string) => `, ${name}`,
    driedSaid: (name: string) => `${name} is marked dried out.`,
    tickFetched: (name: string) => `Fetched: ${name}`,
    untickFetched: (name: string) => `Not fetched: ${name}`,
  },

  bench: {
    lead: (steps: number) =>
      steps === 0 ? "Nothing noted yet." : `${capital(things(steps, "step", "steps"))} noted.`,
    leadMore: (basics: number, bends: number) =>
      [
        basics > 0 ? `${capital(things(basics, "basic", "basics"))} added.` : "",
        bends > 0 ? `${capital(things(bends, "rule", "rules"))} bent, and said so.` : "",
      ]
        .join(" ")
        .trim(),
    prompts: "The prompt",
    promptText: "Prompt",
    promptFrom: (from: string) => (from === "kit" ? "from the kit" : `from ${from}`),
    addPrompt: "Another prompt",
    addPromptHint: "a viewer's, or your own",
    log: "Steps",
    logEmpty: "What you do, as you do it. With times of the recording they become its chapters.",
    at: "Time",
    atHint: "as in the recording, 12:30",
    what: "What happened",
    addStep: "Add the step",
    basics: "Basics added",
    basicsText: "Something to draw with, to draw on or to erase with, where the kit has none.",
    basicsFrom: "From the stash",
    role: "To",
    roles: { sketch: "draw with", carry: "draw on", erase: "erase with" },
    addBasic: "Add it",
    shown: "Shown only",
    shownText: "What is shown and not used in the piece, a blend say.",
    shownWhy: "Why",
    addShown: "Add it",
    bends: "Rules bent",
    bendsText: "A rule may be bent, said aloud: the write-up prints it.",
    rule: "Rule",
    rules: {
      "1": "Stand-ins come from my own shelves",
      "2": "What a kit once brought me stays out of it",
      "3": "Only the basics may be added",
    },
    bendWhy: "Why it was bent",
    addBend: "Say so",
    notes: "Notes",
    notesLabel: "Anything to remember",
    notesHint: "for yourself; not in the write-up",
    choose: "Nothing is chosen. Choose an item from the stash.",
    write: "It is empty. Write a few words.",
    badTime: "This does not read as a time. Write it as 12:30, or leave it empty.",
    removed: (what: string) => `${capital(what)} removed.`,
    end: "This remake",
    removeRemake: "Remove this remake",
  },

  verdict: {
    lead: (said: number, all: number) =>
      said === 0
        ? "No verdict yet."
        : said === all
          ? `All ${count(all)} judged.`
          : `${capital(count(said))} of ${count(all)} judged.`,
    leadMore: (often: number, buy: number) =>
      `${often === 0 ? "None" : capital(count(often))} you would use often or more, ${count(buy)} you would buy.`,
    items: "Item by item",
    use: "Would I use it?",
    notSaid: "not said",
    uses: ["never", "hardly ever", "now and then", "often", "most weeks", "every day"],
    buy: "Would I buy it?",
    yes: "yes",
    no: "no",
    replaces: "It would replace",
    text: "In a few words",
    stoodIn: (name: string) => `stood in: ${within(name)}`,
    nothingStoodIn: "nothing stood in",
    kit: "The kit as a whole",
    kitLabel: "My verdict",
    finished: "Finished on",
    questions: "Questions for the audience",
    question: "A question",
    addQuestion: "Add the question",
    corrections: "Corrections",
    correctionsText: "What was said wrongly in the recording, with the right of it.",
    at: "Time",
    said: "I said",
    meant: "I meant",
    addCorrection: "Add the correction",
    line: (n: number) => `Line ${n}`,
  },

  writeUp: {
    ready: "Ready to publish.",
    notYet: "Nearly ready.",
    tooTight: "Ready, but shortened.",
    size: (bytes: string, limit: string) => `${bytes} of ${limit} bytes.`,
    leftOut: (titles: readonly string[]) => `Left out for length: ${titles.join("; ")}.`,
    episode: "The episode",
    title: "Title",
    disclosure: "How the supplies came to me",
    disclosures: {
      own: "mine already",
      bought: "bought myself",
      gifted: "given to me",
      lent: "lent to me",
      sponsored: "sponsored",
      affiliate: "with paid links",
    },
    disclosureHint: "Say it in the recording too. Local advertising rules come first.",
    tags: "Tags",
    tagsHint: "with commas between, three to five",
    links: "Links",
    linkText: "What it leads to",
    linkUrl: "Address",
    linkUrlHint: "begins with https://",
    badUrl: "This is no secure address. Begin it with https://.",
    addLink: "Add the link",
    reminders: "Before you publish",
    text: "The text",
    form: "As",
    forms: { text: "plain text", markdown: "Markdown", csv: "tables (CSV)" },
    limit: "Limit",
    limitUnit: "bytes",
    badLimit: "Write the limit as a whole number of bytes, such as 5000.",
    count: (bytes: string, limit: string | null) =>
      limit === null ? `${bytes} bytes` : `${bytes} of ${limit} bytes`,
    copy: "Copy the text",
    copied: "Copied, with its tables for where they can be pasted.",
    copiedPlain: "Copied as plain text.",
    notCopied: "The browser did not let it be copied. Select the text and copy it by hand, or download it.",
    download: "Download",
    publish: "Publish: keep this version",
    publishText: "Keeps the text and its figures as they are today; later changes do not touch it.",
    published: (date: string) => `The version of ${date} is kept.`,
    versions: "Published versions",
    noVersions: "A kept version stays as it was, whatever changes later.",
    version: (date: string) => `Version of ${date}`,
    versionSize: (bytes: string) => `${bytes} bytes`,
    show: "show",
    fileName: "write-up",
  },
};

export type RemakeWords = typeof remakes;
export const remakeWords: RemakeWords = remakes;
