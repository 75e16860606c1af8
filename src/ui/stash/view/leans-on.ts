import type { Workbook } from "../../../engine/workbook/index.ts";

type Book = Pick<Workbook, "stash" | "remakes">;

/** How much of a notebook mentions some things of its stash: remakes, and twins that are none of them. */
export function leansOn(
  { stash, remakes }: Book,
  ids: ReadonlySet<string>,
): Readonly<{ remakes: number; twins: number }> {
  const isOf = ({ stash: id }: Readonly<{ stash?: string | null | undefined }>) => !!id && ids.has(id);
  return {
    remakes: (remakes ?? []).filter(
      ({ picks, essentials, shownOnly }) =>
        (picks ?? []).some(({ uses }) => (uses ?? []).some(isOf)) ||
        (essentials ?? []).some(isOf) ||
        (shownOnly ?? []).some(isOf),
    ).length,
    twins: (stash ?? []).filter(
      ({ id, twinOf }) => !ids.has(id) && (twinOf ?? []).some((twin) => ids.has(twin)),
    ).length,
  };
}
