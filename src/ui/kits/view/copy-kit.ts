import type { Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { newId } from "../../../store/index.ts";

/** How an earlier kit's lines are taken over. `source`: who is named for them, such as "as in April light". */
export type Copying = Readonly<{ withPrices: boolean; source: string; today: string }>;

/** Whether a line has a list price that another kit can go by. */
const hasPrice = ({ evidence, settled }: Line): boolean =>
  (settled ?? []).some(({ kind, price }) => kind !== "street" && price) ||
  (evidence ?? []).some(({ kind, price }) => kind === "list" && price);

function copyOf(line: Line, id: string, kit: Kit, { withPrices, source, today }: Copying): Line {
  const { supply, qty, want, exclusive, variants } = line;
  return {
    id,
    ...(qty ? { qty } : {}),
    supply,
    ...(want ? { want } : {}),
    ...(exclusive ? { exclusive } : {}),
    ...(variants?.length ? { variants } : {}),
    claims: [{ field: "name", value: supply.name, sure: "believed", source, date: today }],
    ...(withPrices && hasPrice(line)
      ? { evidence: [{ id: "e1", kind: "precedent", line: `${kit.id}/${line.id}`, date: today }] }
      : {}),
  };
}

/**
 * The lines of an earlier kit as a start for a new one, each with an id of its own: believed until somebody has seen
 * them in it. Prices stay behind, or count as what an earlier card said.
 */
export function copiedLines(kit: Kit, copying: Copying): Line[] {
  const made: Line[] = [];
  for (const line of kit.lines ?? []) made.push(copyOf(line, newId("l", made), kit, copying));
  return made;
}
