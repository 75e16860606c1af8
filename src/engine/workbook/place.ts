/** A place in a file as people read it: `kits[0].lines[2].evidence[0].price.amount`; the whole is `file`. */
export function placeOf(path: readonly PropertyKey[]): string {
  const steps = path.map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`));
  return steps.join("").replace(/^\./, "") || "file";
}
