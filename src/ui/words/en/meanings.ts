import type { terms } from "./terms.ts";

type Meaning = Readonly<{
  /** What it means, in a sentence or two. */
  text: string;
  /** What stands behind it, for those who ask on: the method and its source. */
  behind?: string;
}>;

/** What our own words mean. */
export const meanings: Readonly<Record<keyof typeof terms, Meaning>> = {
  kit: { text: "What a subscription sent out once: the supplies in it, its prompt, and what it cost." },
  prompt: { text: "The task that came with a kit: what to draw or paint with it." },
  stash: { text: "Everything you own to draw and paint with." },
  standIn: { text: "The thing from your stash that plays the part of an item of the kit." },
  gap: {
    text: "Nothing you own comes near enough to play this part, so the line stays open.",
    behind: "Under 40 of 100 counts as nothing close.",
  },
  near: {
    text: "How well one thing stands in for another, from 0 to 100. What the kit's item is known to be is held against yours, trait by trait; colour counts most where there is one.",
    behind:
      "Gower's general similarity (1971) over the traits, each with its weight. 85 and up is very near, 65 fairly near, 40 at a pinch.",
  },
  apart: {
    text: "How different two colours look. Under 2 it shows only side by side, under 5 they are close, past 20 they are another colour.",
    behind: "The CIEDE2000 difference, from CIELAB under daylight (D65).",
  },
  palette: {
    text: "Choosing the stand-ins so that the kit's colours keep their distances to each other: three reds that were distinct stay distinct, even if one of them alone could be nearer.",
  },
  steps: { text: "How much the distances between the kit's own colours have changed with the stand-ins." },
  twin: { text: "The very same product, sold under another label." },
  pinch: {
    text: "It would do, but it shows: another kind of thing, or a colour that misses.",
    behind: "40 to 64 of 100.",
  },
  work: { text: "It stands in once something is done to it: a sheet cut down, two colours mixed." },
  lastResort: {
    text: "In a kit that you have had before, the very same thing plays its part only if nothing else can.",
  },
  received: {
    text: "A kit that was once sent to you. Its own things and their twins stay out of its remake, unless you let the twins in.",
  },
  remake: {
    text: "One run of the challenge: a kit made up from your own shelves, its prompt followed, a piece made and shown.",
  },
  basics: {
    text: "Something to draw with, to draw on or to erase with. They may be added where the kit has none, and are listed apart.",
  },
  shown: {
    text: "Shown in the recording but not used in the piece, a blend for example. It is listed apart.",
  },
  bent: { text: "A rule of the game that you went round, and say so: the write-up prints which and why." },
  verdict: {
    text: "What you yourself make of an item or of the kit: would you use it, would you buy it?",
  },
  writeup: {
    text: "What gets published: the text under the video, with what was in the kit and what stood in.",
  },
  sources: {
    text: "What is known of a kit comes from cards, photos and posts, and they do not always say the same. Each keeps its word, and you say which one counts.",
  },
  listPrice: { text: "The price the maker asks, before any shop takes something off. Also called RRP." },
  shopPrice: {
    text: "The lowest price a shop asked near the day that counts, of the very same pack and in stock. Also called street price.",
    behind: "Within 90 days either side of the day; the newest of each shop counts.",
  },
  found: { text: "Every price that was seen for an item: where, on which day, and who says so." },
  goWith: { text: "A price you settle on yourself, with your reason. It goes before all that was found." },
  earlier: { text: "The prices that earlier kits' cards gave for a thing of the same kind." },
  tier: { text: "One way to subscribe: month by month, for a season, for a year. Each has its price." },
  pays: {
    text: "The contents come to more than one kit costs on that tier, even at the low end of what the prices may be.",
  },
  hangs: {
    text: "Whether it pays cannot be told until one line's price is better known. It names the line.",
  },
  wanted: { text: "The contents at shop prices, each counted only as far as you would use it." },
  breakEven: {
    text: "The share of the contents that has to be of use to you before the kit has paid for itself.",
  },
  border: {
    text: "Duty, tax and the carrier's fee on what is sent from another country. They are estimates: the customs or tax authority where it arrives decides.",
  },
  market: {
    text: "A country or region as its shoppers know it: its money, its prices, and what its border charges.",
  },
  asOf: { text: "The day whose prices and exchange rates count for a kit." },
  rates: {
    text: "What one currency was worth in others on a day. Each kit is converted at the newest rates of its day or before; it never guesses one.",
  },
  notebook: { text: "All that you keep here, in this browser on this device." },
  copy: { text: "Your whole notebook as one file, to keep elsewhere and to bring back." },
  setAside: {
    text: "Before anything large is done, the whole notebook is kept as it was, so that you can go back to it.",
  },
};

/** The words of the page that lists them all. */
export const meaningsPage = {
  title: "Our words",
  lead: "Words that mean something of their own here.",
  leadMore: "Each can be asked where it stands, too: the dotted ones say what they mean.",
  groups: {
    game: "The game",
    near: "How near",
    money: "Money",
    telling: "Telling it",
    keeping: "Keeping it",
  },
};
