import type { In } from "#lib/quantity";
import type { CostConventions, PriceLine } from "../model";
import { fisherRateWithout } from "../nominal-rate";
import type { InputActs } from "./model";

/** A line of a bid. */
export type LineRef = Readonly<{ bid: string; line: string }>;

/** Which figure of a line moves. Prices are in cents per SI unit and quantities in SI, as the lines keep them. */
export type LinePart = "price" | "quantity" | "unit-price" | "renewal-price" | "removal-price";

/**
 * What becomes of the figure: it is the input itself; or it is in proportion to it, so that an index or a share serves
 * lines of unlike size; or it rises by so much per unit of the input, as a removal does by tons × fee.
 */
export type LineMove = Readonly<{ kind: "set" } | { kind: "in-proportion" } | { kind: "add"; perUnit: number }>;

/** What an input moves. One input may move lines of several bids at once. */
export type InputTarget = Readonly<
  | { kind: "amount"; of: readonly LineRef[]; part: LinePart; move: LineMove }
  | { kind: "life"; of: readonly LineRef[] }
  | { kind: "escalation"; of: readonly LineRef[] }
  | { kind: "real-rate" }
  /** With the nominal rate kept, inflation moves the real one; lines of a price fixed in current money lose to it. */
  | { kind: "inflation"; nominalRate: number | null; fixedPrices: readonly LineRef[] }
>;

/** How an input acts that moves such a target. */
export function actsOf(target: InputTarget): InputActs {
  switch (target.kind) {
    case "amount":
      return { kind: "proportion" };
    case "life":
      return { kind: "choice" };
    case "escalation":
      return { kind: "growth", factor: (value) => 1 + value };
    case "real-rate":
      return { kind: "rate" };
    case "inflation":
      return target.fixedPrices.length > 0 ? { kind: "growth", factor: (value) => 1 / (1 + value) } : { kind: "rate" };
  }
}

/** The lines that a target names, without regard to what becomes of them. */
export function linesOf(target: InputTarget): readonly LineRef[] {
  switch (target.kind) {
    case "amount":
    case "life":
    case "escalation":
      return target.of;
    case "inflation":
      return target.fixedPrices;
    case "real-rate":
      return [];
  }
}

/** The figure after the move. */
function moved(move: LineMove, figure: number, value: number, base: number): number {
  switch (move.kind) {
    case "set":
      return value;
    case "in-proportion":
      return figure * (value / base);
    case "add":
      return figure + (value - base) * move.perUnit;
  }
}

type Field = Readonly<{ value: number }>;

/** The same written figure with another number in it. What was typed stays, as nothing is shown from here. */
const withValue = <F extends Field>(field: F, value: number): F => ({ ...field, value: value as F["value"] });

type LineAmount = Extract<PriceLine, { amount: unknown }>["amount"];

function amountWith(amount: LineAmount, part: LinePart, change: (figure: number) => number): LineAmount {
  if (amount.kind === "per-unit") {
    if (part === "quantity") return { ...amount, quantity: withValue(amount.quantity, change(amount.quantity.value)) };
    return { ...amount, unitPrice: withValue(amount.unitPrice, change(amount.unitPrice.value)) };
  }
  if (amount.kind === "share") return { ...amount, share: withValue(amount.share, change(amount.share.value)) };
  return { ...amount, price: withValue(amount.price as Field, change(amount.price.value)) } as LineAmount;
}

function mainPrice(amount: LineAmount): number {
  switch (amount.kind) {
    case "per-unit":
      return amount.unitPrice.value;
    case "share":
      return amount.share.value;
    default:
      return amount.price.value;
  }
}

const share = (value: number) =>
  ({ asEntered: "", dimension: "fraction", unit: "", value: value as In<"1"> }) as NonNullable<
    PriceLine<"yearly">["escalation"]
  >;

/** A line with one of its figures moved. */
export function lineWith(line: PriceLine, target: InputTarget, value: number, base: number): PriceLine {
  switch (target.kind) {
    case "amount":
      return withAmount(line, target.part, (figure) => moved(target.move, figure, value, base));
    case "life":
      return line.kind === "replacement-chain" ? { ...line, life: { ...line.life, years: value } } : line;
    case "escalation":
      return withGrowth(line, value);
    case "inflation":
      return withGrowth(line, 1 / (1 + value) - 1);
    case "real-rate":
      return line;
  }
}

const withGrowth = (line: PriceLine, growth: number): PriceLine =>
  line.kind === "at-base-date" ? line : { ...line, escalation: share(growth) };

function withAmount(line: PriceLine, part: LinePart, change: (figure: number) => number): PriceLine {
  if (part !== "renewal-price" && part !== "removal-price")
    return { ...line, amount: amountWith(line.amount, part, change) };
  if (line.kind !== "replacement-chain") return line;
  if (part === "removal-price")
    return line.removal === null ? line : { ...line, removal: amountWith(line.removal, "price", change) };
  // a renewal is priced by what it saves of the first cost
  const first = mainPrice(line.amount);
  const renewal = first * (1 - (line.renewalSaving?.value ?? 0));
  return { ...line, renewalSaving: share(1 - change(renewal) / first) };
}

/** The real rate at a value of the input that moves it. */
export function rateWith(conventions: CostConventions, target: InputTarget, value: number): number {
  if (target.kind === "real-rate") return value;
  if (target.kind === "inflation" && target.nominalRate !== null) return fisherRateWithout(target.nominalRate, value);
  return conventions.realRate.value;
}
