import * as z from "zod/mini";
import { FractionToOne, Id, listOf, maybe, Text } from "../record/index.ts";

const Use = z.looseObject({ stash: maybe(Id), share: maybe(FractionToOne), work: maybe(Text) });

/** What plays a line's part. `uses` empty: left open on purpose. Two uses: a mix or layers, shares sum to 1. */
export const PickSchema = z.looseObject({
  line: maybe(Id),
  uses: listOf(Use),
  by: maybe(z.enum(["person", "engine"])),
  note: maybe(Text),
});

/** Switches for the rules of the game. */
export const RulesSchema = z.looseObject({ twins: maybe(z.boolean()) });

/** A person's own likeness weights, by family and trait; the rest as built in. */
export const WeightsSchema = z.record(
  z.string(),
  z.nullable(
    z.record(
      z.string(),
      z.nullable(z.number().check(z.minimum(0, "below nought; write a weight from 0 up"))),
    ),
  ),
);

export type Pick = z.infer<typeof PickSchema>;
export type Rules = z.infer<typeof RulesSchema>;
export type Weights = z.infer<typeof WeightsSchema>;
