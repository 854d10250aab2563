import type { PlainPrice } from "../costing-model";
import { ownersLine } from "../levelling/owners-line";
import type { PriceLine } from "../model";
import type { TechnicalLink } from "./model";

/** The line that a link adds; its id is made free when it joins the others. */
export const addedLine = ({ id, label, category }: TechnicalLink, price: PlainPrice): PriceLine =>
  ownersLine(price, category, { id: `link-${id}`, label, note: "", purpose: id });
