import type { CostCategory } from "../categories";
import type { PlainPrice } from "../costing-model";
import type { PriceLine, PriceLineHead } from "../model";

/** What an owner's line says about itself. */
export type OwnersHead = Readonly<{ id: string; label: string; note: string; purpose?: PriceLineHead["purpose"] }>;

/** A price of the owner's as a price line, so that it flows, discounts and shows like any other. */
export function ownersLine(price: PlainPrice, category: CostCategory, head: OwnersHead): PriceLine {
  const own: PriceLineHead = {
    ...{ purpose: "", statedExtension: null, document: "", page: "" },
    ...head,
    givenBy: "owner-estimate",
    role: { kind: "base-bid" },
  };
  switch (price.kind) {
    case "at-base-date":
      return { ...own, ...price, category };
    case "in-year":
      return { ...own, ...price, category };
    case "yearly":
      return { ...own, ...price, category };
    case "periodic":
      return { ...own, ...price, category };
  }
}

/** An id of a kind that no line has yet. */
export function freeId(wanted: string, taken: ReadonlySet<string>): string {
  let id = wanted;
  while (taken.has(id)) id = `${id}-x`;
  return id;
}
