/**
 * What a forgiving field made of a text: nothing written, a value, two values to choose from, or a fault with
 * its fix. Nothing is ever guessed between two readings.
 */
export type Reading =
  | Readonly<{ kind: "empty" }>
  | Readonly<{ kind: "value"; value: string }>
  | Readonly<{ kind: "ask"; values: readonly string[] }>
  | Readonly<{ kind: "fault"; fault: string }>;

export const fault = (text: string): Reading => ({ kind: "fault", fault: text });
export const value = (text: string): Reading => ({ kind: "value", value: text });
