/** Joins class names; what is false or absent is left out. */
export const classes = (...names: readonly (string | false | null | undefined)[]): string =>
  names.filter(Boolean).join(" ");
