import type { Distribution } from "#lib/sampling";
import type { CostCategory } from "../categories";
import type { LinkId } from "../link-ids";
import type { LinePart } from "./targets";

/** What the owner says is not known for certain. Prices and quantities are told as shares of the figure as entered. */
export type StatedTarget = Readonly<
  /** One figure of one line of one bid. */
  | { kind: "line"; bid: string; line: string; part: LinePart }
  /** The prices of a category in all bids, parts with a life aside: one index moves them together. */
  | { kind: "category"; category: CostCategory }
  /** One figure of every part with a life, in all bids. */
  | { kind: "parts"; part: "price" | "renewal-price" | "removal-price" }
  /** Every line that is spent on one thing, in all bids. */
  | { kind: "purpose"; purpose: LinkId }
  /** The life of one part, in whole years. */
  | { kind: "life"; bid: string; line: string }
  /** The growth of one line a year over general inflation. */
  | { kind: "growth"; bid: string; line: string }
  | { kind: "real-rate" }
>;

/** One figure that is not known for certain, as the owner states it. */
export type StatedInput = Readonly<{
  id: string;
  label: string;
  target: StatedTarget;
  /** As written, beside what it says. */
  figures: string;
  distribution: Distribution;
  /** Inputs with the same driver share their luck; empty for one that moves alone. */
  driver: string;
}>;

/** What is uncertain in a project's costs, and how it is drawn. */
export type StatedUncertainty = Readonly<{ seed: number; samples: number; inputs: readonly StatedInput[] }>;
