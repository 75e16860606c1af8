import { listed, spelled, within } from "./say.ts";

const things = (n: number): string => (n === 1 ? "1 thing in the stash" : `${n} things in the stash`);
const kits = (n: number): string => (n === 1 ? "1 kit" : `${n} kits`);

/** The words of the Desk, in English. */
export const deskWords = {
  first: {
    title: "A new notebook",
    what: "Understudy makes up a kit that was once sent out from the supplies you own, says what stands in for what and why, and whether the kit would have been worth its price where you live.",
    lead: "What you enter stays in this browser, on this device.",
    leadMore: "Nothing is sent anywhere. Save a copy now and then: Keep safe does it in one click.",
    leadGone: "This browser keeps nothing here, so what you enter lasts only until this tab is closed.",
    leadGoneMore: "Save a copy before you close it, or open the app in an ordinary window.",
    waysTitle: "Ways to begin",
    sampleTitle: "Look around in a sample",
    sampleText:
      "An invented year: a stash, ten kits from two makers, prices in three countries and a finished remake. One click takes it out again.",
    sampleAct: "Try the sample",
    sampleLoading: "Loading the sample",
    stashTitle: "Begin with what you own",
    stashText: "Write things down as you would say them, or paste a list.",
    stashAct: "Start my stash",
    kitTitle: "Begin with a kit",
    kitText: "Any kit that was once sent out: what was in it, what it cost, its prompt.",
    kitAct: "Log a kit",
    restoreTitle: "Bring back a copy",
    restoreText: "A file that you saved here or on another device.",
    restoreAct: "Restore a copy",
  },

  emptied: {
    title: "Bring your notebook back",
    lead: (stash: number, kitCount: number, date: string) =>
      `On ${date} this browser held ${things(stash)} and ${kits(kitCount)}.`,
    leadMore: "It has cleared its storage since. Choose the last copy you saved, and all of it is back.",
    act: "Choose a copy",
    anew: "Or begin anew",
  },

  sample: {
    label: "Try the sample",
    note: "This is the sample. Change anything: it is only invented.",
    remove: "Remove the sample",
    removed: "The sample is removed. What you added yourself is still here.",
    failed: "The sample could not be loaded. Check that you are online, then try again.",
  },

  next: {
    title: {
      "stand-ins": "Next: the stand-ins",
      bench: "Next: the bench",
      verdict: "Next: the verdict",
      "write-up": "Next: the write-up",
    },
    go: {
      "stand-ins": "Look over the stand-ins",
      bench: "Go on at the bench",
      verdict: "Say what it was worth",
      "write-up": "Go on with the write-up",
    },
    step: (date: string, step: number) => `remake begun ${date}, step ${step} of 4`,
    prompt: (text: string) => `Prompt: ${text}`,
    fetched: (done: number, all: number) =>
      done === 0
        ? `Nothing is fetched yet.`
        : `${done === all ? "Everything is" : `${done} of ${all} ${done === 1 ? "is" : "are"}`} fetched.`,
    fetch: (left: number) => `Fetch ${left === 1 ? "the last one" : `the other ${spelled(left)}`}`,
    fetchAll: (count: number) => (count === 1 ? "Fetch it" : `Fetch all ${spelled(count)}`),
    for: (name: string) => `for ${within(name)}`,
    nothing: "nothing close",
    left: "left out",
    strip: "Its stand-ins",
    others: "Also under way",
    noLines: "Its contents are not logged yet.",
    logLines: "Log its contents",

    takeUpTitle: "Next: take up a kit",
    takeUpLead: (kit: string, figure: string) => `Your stash makes up ${kit} best: ${figure} of 100.`,
    takeUpNone: "Every kit logged here has been taken up. Log another, or take one up again.",
    takeUpAct: "Start a remake",
    logTitle: "Next: log a kit",
    logLead: "Your stash is begun. Log a kit, and see how well you could make it up.",
    logAct: "Log a kit",
    stashTitle: "Next: your stash",
    stashLead: "A kit is logged. Put what you own into the stash, and each item finds its nearest.",
    stashAct: "Start my stash",
  },

  coverage: {
    title: "Could I make these up?",
    all: (count: number) => (count === 1 ? "The one kit" : `All ${count} kits`),
    kit: "Kit",
    colours: "Some of its colours",
    items: "Items",
    gaps: "Gaps",
    weakest: "Weakest",
    figure: "Of 100",
    gapCount: (count: number) => (count === 0 ? "none" : count === 1 ? "1 gap" : `${count} gaps`),
    from: (maker: string, month: string) => `${maker}, ${month}`,
    asked: (names: readonly string[]) => `asked for by ${listed(names)}`,
    askedSomebody: "asked for",
    received: "received before",
    whyLabel: "why these?",
    whyAbout: "how the kits are ranked",
    why: "Every item of a kit is held against all you own, and each thing can play one part only. “Of 100” is how near the stand-ins come on average; an item with nothing close counts 0. Kits with a remake are left out here.",
    hidden: (count: number) =>
      `${count === 1 ? "One kit has" : `${spelled(count).replace(/^./, (a) => a.toUpperCase())} kits have`} a remake and ${count === 1 ? "is" : "are"} not shown.`,
  },

  prices: {
    title: "Prices to look at",
    none: "Every line has a price found, and the rates are fresh.",
    missing: (places: readonly string[]) => `no price for ${listed(places)}`,
    guess: "a guess",
    scaled: "worked out from another pack",
    oldRates: (date: string) => `Rates of ${date}`,
    daysBefore: (days: number, date: string) => `${days} days before the prices of ${date}`,
    noDay: "as of which day is not said",
    noRates: "No exchange rates yet",
    noRatesFact: "add a table under Markets",
    more: (count: number) => (count === 1 ? "and 1 more" : `and ${count} more`),
  },

  kept: {
    title: "Kept safe",
    never: "No copy has been saved from this browser yet.",
    today: (time: string) => `Last copy saved today at ${time}.`,
    on: (date: string) => `Last copy saved on ${date}.`,
    holds: (stash: number, kitCount: number) => `${things(stash)}, ${kits(kitCount)}.`,
    gone: "Nothing is kept in this browser. Save a copy before you close the tab.",
    act: "Back up now",
    place: "More ways to keep it safe",
  },
};
