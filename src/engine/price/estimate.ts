import { type Checked, faultsOf, onceEach, printed, refuse } from "../money/index.ts";
import type { Fault, Language } from "../record/index.ts";
import { marketOf, type PriceBook, type PricedKit, type Scene, sceneOf, valuedOnOf } from "./book.ts";
import type { Chosen, Option } from "./choose.ts";
import { chooseList } from "./list.ts";
import type { Evidence, Line } from "./schema.ts";
import { chooseStreet } from "./street.ts";
import type { Draft, Estimate } from "./trace.ts";

/**
 * What is known of one line's price in one market, per unit. `faults` says which rates or dates are
 * missing for the two estimates gone with; a figure that needs them is null.
 */
export type LineEstimate = Readonly<{
  list: Estimate | null;
  street: Estimate | null;
  listOptions: readonly Estimate[];
  streetOptions: readonly Estimate[];
  /** Looked for in this market, or in one not noted, and not sold there. */
  notSold: readonly Evidence[];
  faults: readonly Fault[];
}>;

const estimateOf = (draft: Draft): Estimate => ({
  likely: printed(draft.likely),
  low: printed(draft.low),
  high: printed(draft.high),
  method: draft.method,
  sentence: `${draft.words}.`,
  trace: draft.trace,
});

const pickedOf = (option: Option | null): Estimate | null =>
  option?.draft.ok ? estimateOf(option.draft.value) : null;

const optionsOf = ({ options }: Chosen): readonly Estimate[] =>
  options.flatMap(({ draft }) => (draft.ok ? [estimateOf(draft.value)] : []));

const missingFor = (...options: readonly (Option | null)[]): readonly Fault[] =>
  onceEach(options.flatMap((option) => (option ? faultsOf(option.draft) : [])));

const unknown = (fault: Fault): LineEstimate => ({
  list: null,
  street: null,
  listOptions: [],
  streetOptions: [],
  notSold: [],
  faults: [fault],
});

function estimateIn(scene: Scene): LineEstimate {
  const { line, market } = scene;
  const list = chooseList(scene);
  const street = chooseStreet(scene, list.picked);
  return {
    list: pickedOf(list.picked),
    street: pickedOf(street.picked),
    listOptions: optionsOf(list),
    streetOptions: optionsOf(street),
    notSold: (line.evidence ?? []).filter(
      (evidence) => evidence.kind === "not-sold" && (evidence.market ?? market.id) === market.id,
    ),
    faults: missingFor(list.picked, street.picked),
  };
}

/**
 * Estimates a line's list and street price in a market, converted on the kit's `valuedOn` and rounded to
 * the market's minor unit.
 * @returns both estimates (null where nothing is known), all that apply, and what is missing
 */
export function estimateLine(
  book: PriceBook,
  kit: PricedKit,
  line: Line,
  marketId: string,
  language: Language = "en",
): LineEstimate {
  const scene = sceneOf(book, kit, line, marketId, language);
  return scene.ok ? estimateIn(scene.value) : unknown(scene.fault);
}

/** One line's estimates beside its quantity. */
export type PricedLine = Readonly<{ line: Line; qty: number; estimate: LineEstimate }>;

/**
 * Estimates every line of a kit in a market, in the file's order.
 * @returns every missing rate and date at once where there is one
 */
export function estimateKit(
  book: PriceBook,
  kit: PricedKit,
  marketId: string,
  language: Language = "en",
): Checked<readonly PricedLine[]> {
  const market = marketOf(book.markets, marketId);
  if (!market.ok) return refuse([market.fault]);
  const valuedOn = valuedOnOf(book, kit);
  if (!valuedOn.ok) return refuse([valuedOn.fault]);
  const laws: Scene["laws"] = new Map(); // one for all lines: they share the market and the day
  const lines = (kit.lines ?? []).map((line) => {
    const scene = sceneOf(book, kit, line, marketId, language);
    const estimate = scene.ok ? estimateIn({ ...scene.value, laws }) : unknown(scene.fault);
    return { line, qty: line.qty ?? 1, estimate };
  });
  const [first, ...rest] = onceEach(lines.flatMap(({ estimate }) => estimate.faults));
  return first ? refuse([first, ...rest]) : { ok: true, value: lines };
}

/** An estimate as the command line prints it. */
export type PrintedEstimate = Omit<Estimate, "trace">;

/** The figures of the command line's `prices`. */
export type KitPrices = Readonly<{
  lines: readonly Readonly<{
    line: string;
    qty: number;
    list: PrintedEstimate | null;
    street: PrintedEstimate | null;
  }>[];
}>;

function withoutTrace(estimate: Estimate | null): PrintedEstimate | null {
  if (!estimate) return null;
  const { trace: _, ...rest } = estimate;
  return rest;
}

/** Prices of a kit's lines in a market, exactly as the command line's `prices` prints them. */
export function pricesOf(book: PriceBook, kit: PricedKit, marketId: string): Checked<KitPrices> {
  const lines = estimateKit(book, kit, marketId);
  if (!lines.ok) return lines;
  return {
    ok: true,
    value: {
      lines: lines.value.map(({ line, qty, estimate }) => ({
        line: line.id,
        qty,
        list: withoutTrace(estimate.list),
        street: withoutTrace(estimate.street),
      })),
    },
  };
}
