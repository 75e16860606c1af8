/**
 * What a cell was read as. `value` null: nothing was understood, and the cell is to be kept as it stands.
 * `doubt`: why somebody should look at it.
 */
export type Said<T> = Readonly<{ value: T | null; doubt: string | null }>;

export const sure = <T>(value: T): Said<T> => ({ value, doubt: null });
export const doubtful = <T>(value: T, doubt: string): Said<T> => ({ value, doubt });
export const unread = (doubt: string): Said<never> => ({ value: null, doubt });
