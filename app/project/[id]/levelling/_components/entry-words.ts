import type { LevelledValues } from "./levelled-values";

type EntryText = LevelledValues["levelling"][number];

/** Standings under which something has to stand in for the price. */
const lacking: ReadonlySet<EntryText["standing"]> = new Set(["excluded", "unclear", "by-owner"]);

export const lacksPrice = ({ standing }: Pick<EntryText, "standing">): boolean => lacking.has(standing);

const schedules = {
  "at-base-date": "",
  "in-year": " later",
  yearly: " a year",
  periodic: " every few years",
} as const;

function amountWritten(amount: Extract<NonNullable<EntryText["plug"]>, { kind: "figure" }>["price"]["amount"]): string {
  switch (amount.kind) {
    case "lump-sum":
    case "per-area":
      return amount.price;
    case "per-unit":
      return amount.quantity === "" && amount.unitPrice === "" ? "" : `${amount.quantity} at ${amount.unitPrice}`;
    case "share":
      return amount.share;
  }
}

/** What stands in for the price of an item, as it was written, for the cell of the matrix. */
export function plugInWords({ plug = { kind: "none" } }: Pick<EntryText, "plug">): string {
  switch (plug.kind) {
    case "none":
      return "no figure yet";
    case "figure": {
      const written = amountWritten(plug.price.amount);
      return written === "" ? "no figure yet" : `plug ${written}${schedules[plug.price.kind]}`;
    }
    case "median":
      return "plug: median of the others";
    case "question":
      return "asked, no figure yet";
  }
}

/** Whether nothing stands in for the price, so that the levelled cost is only a least. */
export const isOpen = (entry: Pick<EntryText, "standing" | "plug">): boolean =>
  lacksPrice(entry) && /no figure yet$/.test(plugInWords(entry));
