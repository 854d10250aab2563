import { amountText } from "#lib/cost";
import type { WorkingInput } from "#lib/figure";
import { measured } from "#lib/quantity";
import type { Bought } from "./bought-at-base-date";
import type { CheckedBid } from "./model";

/** A price line as an input of a working, with its amount as entered. */
export const priceLineInput = ({ id: bid, area }: Pick<CheckedBid, "id" | "area">, line: Bought): WorkingInput => ({
  label: line.label,
  text:
    line.amount.kind === "per-area" && area.kind !== "known"
      ? line.amount.price.asEntered
      : amountText(line.amount, area.kind === "known" ? area.value : measured("area", 0)),
  from: { kind: "price-line", bid, line: line.id },
});
