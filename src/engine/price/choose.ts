import type { Money } from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import type { Choice, Scene } from "./book.ts";
import { draftOf, quoteSettled } from "./quote.ts";
import { byHandWords, settledWords } from "./say.ts";
import { methodNamed } from "./settled.ts";
import type { Draft, Method } from "./trace.ts";

/** One way to a figure that applies: the figure, or the missing rate that stands in its way. */
export type Option = Readonly<{ method: Method; draft: Outcome<Draft> }>;

/** The option gone with, and all that apply, in their order; `picked` is null where none does. */
export type Chosen = Readonly<{ picked: Option | null; options: readonly Option[] }>;

export const optionOf = (method: Method, draft: Outcome<Draft>): Option => ({ method, draft });

/** Turns a draft that is there into another. */
export const mapDraft = (draft: Outcome<Draft>, change: (draft: Draft) => Draft): Outcome<Draft> =>
  draft.ok ? ok(change(draft.value)) : draft;

function settledOption(scene: Scene, choice: Choice, price: Money): Option {
  const quoted = quoteSettled(scene, choice, price);
  if (!quoted.ok) return optionOf("settled", quoted);
  const draft = draftOf(quoted.value, "settled", settledWords(scene, quoted.value));
  const trace = { ...draft.trace, chosen: true, reason: choice.settled.reason ?? null };
  return optionOf("settled", ok({ ...draft, trace }));
}

/** Marks the method as the one a person went with; the figure and the method's name stay. */
function byHand(scene: Scene, option: Option, choice: Choice): Option {
  const reason = choice.settled.reason ?? null;
  return optionOf(
    option.method,
    mapDraft(option.draft, (draft) => ({
      ...draft,
      words: byHandWords(scene, draft.words, reason),
      trace: { ...draft.trace, chosen: true, reason },
    })),
  );
}

/**
 * What one settled entry comes to, `options` being asked for only where it names a method.
 * @returns undefined where it names neither a price nor a method that applies
 */
export function settle(scene: Scene, choice: Choice, optionsOf: () => readonly Option[]): Option | undefined {
  if (choice.settled.price) return settledOption(scene, choice, choice.settled.price);
  if (!choice.settled.method) return undefined;
  const options = optionsOf();
  const method = methodNamed(
    choice,
    options.map((option) => option.method),
  );
  const option = options.find((other) => other.method === method);
  return option && byHand(scene, option, choice);
}

/** Goes with the first settled entry that comes to something, else with the first option. */
export function choose(scene: Scene, choices: readonly Choice[], options: readonly Option[]): Chosen {
  for (const choice of choices) {
    const picked = settle(scene, choice, () => options);
    if (picked?.method === "settled") return { picked, options: [picked, ...options] };
    if (picked) return { picked, options };
  }
  return { picked: options[0] ?? null, options };
}
