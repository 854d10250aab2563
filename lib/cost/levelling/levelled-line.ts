import type { LinkId } from "../link-ids";
import type { PriceLine } from "../model";

/** Where a line of a levelled bid comes from. Everything but the bid itself is the owner's. */
export type LineOrigin = Readonly<
  { kind: "bid" } | { kind: "plug"; item: string; by: "figure" | "median" } | { kind: "link"; link: LinkId }
>;

/** A line that counts in the levelled cost of a bid, and where it comes from. */
export type LevelledLine = Readonly<{ line: PriceLine; origin: LineOrigin }>;
