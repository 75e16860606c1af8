import type { Io } from "./io.ts";

type Option = Readonly<{ type: "string" | "boolean"; multiple?: boolean }>;
export type Values = Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;

export type Call = Readonly<{ operands: readonly string[]; options: Values; io: Io }>;

/** One verb: what it takes, and its answer as a document and as text for people. */
export type Verb = Readonly<{
  usage: string;
  operands: number;
  options: Readonly<Record<string, Option>>;
  hasJson: boolean;
  run: (call: Call) => Readonly<{ json: () => unknown; text: () => string }>;
}>;

/** The value of a text option. */
export const textOption = (values: Values, name: string): string | undefined => {
  const value = values[name];
  return typeof value === "string" ? value : undefined;
};

/** The values of an option that may be given several times. */
export const textsOption = (values: Values, name: string): readonly string[] => {
  const value = values[name];
  return Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];
};
