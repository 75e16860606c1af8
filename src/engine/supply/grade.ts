import { grades } from "./traits.ts";

/** Place of a pencil grade on the scale, 0 (hardest, 10H) to 21 (softest, 10B); null when it is no grade. */
export function gradeRank(grade: string): number | null {
  const rank = grades.indexOf(grade);
  return rank < 0 ? null : rank;
}
