/** Whether the reader wants no motion. */
export const isStill = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;
