import type { Draft } from "../understand.ts";

type Here = Readonly<{ things: readonly Readonly<{ id: string }>[]; kits: readonly string[] }>;

/** Drafts that lead only to what there is once they are added: twins and kits that are not there are left out. */
export function tied(drafts: readonly Draft[], { things, kits }: Here): readonly Draft[] {
  const ids = new Set([...things.map(({ id }) => id), ...drafts.flatMap(({ id }) => id ?? [])]);
  const known = new Set(kits);
  return drafts.map(({ twinOf, fromKit, ...draft }) => {
    const twins = (twinOf ?? []).filter((id) => ids.has(id));
    return {
      ...draft,
      ...(twins.length > 0 ? { twinOf: twins } : {}),
      ...(fromKit !== undefined && known.has(fromKit) ? { fromKit } : {}),
    };
  });
}
