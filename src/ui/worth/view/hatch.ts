/** A box in px. */
export type Box = Readonly<{ x: number; y: number; width: number; height: number }>;

const spacing = 5;
const short = (value: number): string => value.toFixed(1);

/** Slanting lines over a box as one path: no pattern, since its id would have to be unique in the page. */
export function hatchPath({ x, y, width, height }: Box): string {
  const lines: string[] = [];
  for (let from = spacing - height; from < width; from += spacing) {
    const start = Math.max(from, 0);
    const end = Math.min(from + height, width);
    if (end <= start) continue;
    const startY = y + height - (start - from);
    const endY = y + height - (end - from);
    lines.push(`M${short(x + start)} ${short(startY)}L${short(x + end)} ${short(endY)}`);
  }
  return lines.join("");
}
