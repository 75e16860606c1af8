import * as z from "zod/mini";
import { PickSchema, RulesSchema } from "../match/index.ts";
import { Count, DateText, Id, type Language, languages, listOf, maybe, Text } from "../record/index.ts";

const Link = z.looseObject({ text: maybe(Text), url: maybe(Text) });

const Verdict = z.looseObject({
  line: maybe(Id),
  use: maybe(
    z
      .int()
      .check(
        z.minimum(0, "below 0; write 0 (never) to 5 (every day)"),
        z.maximum(5, "above 5; write 0 (never) to 5 (every day)"),
      ),
  ),
  buy: maybe(z.boolean()),
  replaces: maybe(Text),
  text: maybe(Text),
});

/**
 * The language of the text, an optional field of ours: a code of `languages`. The format knows no such field, so
 * whatever stands there is kept and is no fault; what is not a code counts as left out.
 */
export const EpisodeLanguage = z.optional(z.unknown());

const Episode = z.looseObject({
  title: maybe(Text),
  disclosure: maybe(z.enum(["bought", "gifted", "lent", "sponsored", "affiliate", "own"])),
  links: listOf(Link),
  tags: listOf(Text),
  language: EpisodeLanguage,
});

/** One run of the challenge: what stood in, what happened, what was said and published. */
export const RemakeSchema = z.looseObject({
  id: Id,
  kit: Id,
  started: DateText,
  finished: maybe(DateText),
  rules: maybe(RulesSchema),
  prompts: listOf(z.looseObject({ text: maybe(Text), from: maybe(Text), date: maybe(DateText) })),
  picks: listOf(PickSchema),
  essentials: listOf(z.looseObject({ stash: maybe(Id), role: maybe(Text) })),
  shownOnly: listOf(z.looseObject({ stash: maybe(Id), why: maybe(Text) })),
  bends: listOf(z.looseObject({ rule: maybe(Count), why: maybe(Text) })),
  log: listOf(z.looseObject({ at: maybe(Text), text: maybe(Text) })),
  photos: listOf(Id),
  verdicts: listOf(Verdict),
  verdict: maybe(Text),
  questions: listOf(Text),
  corrections: listOf(z.looseObject({ at: maybe(Text), said: maybe(Text), meant: maybe(Text) })),
  episode: maybe(Episode),
  published: listOf(z.looseObject({ at: maybe(DateText), text: maybe(Text), figures: maybe(z.unknown()) })),
  entries: listOf(
    z.looseObject({ by: maybe(Text), url: maybe(Text), date: maybe(DateText), picks: listOf(PickSchema) }),
  ),
});

export type Remake = z.infer<typeof RemakeSchema>;

/** The language that a remake's text is kept in, or null where none was chosen. */
export function textLanguage({ episode }: Pick<Remake, "episode">): Language | null {
  return languages.find((known) => known === episode?.language) ?? null;
}
