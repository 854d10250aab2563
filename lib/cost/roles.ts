import { dueDate } from "./due-date";
import type { CostConventions, PriceLine, Role, RoleKind } from "./model";

/** Whether a price counts in the sum of a bid; if not, why, in a sentence. */
export type Standing = Readonly<{ kind: "counts" } | { kind: "left-out"; because: string }>;

/** What standing depends on besides the line. */
type RoleSetting = Pick<CostConventions, "baseDate" | "serviceStart">;

type RoleDefinition<K extends RoleKind> = Readonly<{
  label: string;
  /** When a price in this role counts, in a sentence. */
  rule: string;
  standing: (role: Extract<Role, { kind: K }>, line: PriceLine, setting: RoleSetting) => Standing;
}>;

const counts: Standing = { kind: "counts" };
const leftOut = (because: string): Standing => ({ kind: "left-out", because });
const always = () => counts;

/** Every place that a price can have in a bid. Form, schema and computation read this list. */
export const priceRoles: { readonly [K in RoleKind]: RoleDefinition<K> } = {
  "base-bid": { label: "Base bid", rule: "Always counts.", standing: always },
  "alternate-add": {
    label: "Alternate that adds",
    rule: "Counts once the owner accepts it.",
    standing: ({ accepted }) => (accepted === "yes" ? counts : leftOut("The owner has not accepted this alternate.")),
  },
  "alternate-deduct": {
    label: "Alternate that deducts",
    rule: "Is taken off the sum once the owner accepts it, with or without a minus sign.",
    standing: ({ accepted }) => (accepted === "yes" ? counts : leftOut("The owner has not accepted this alternate.")),
  },
  allowance: {
    label: "Allowance",
    rule: "Always counts: a sum set aside for work that is not measured yet.",
    standing: always,
  },
  "unit-price": {
    label: "Unit price for extra work",
    rule: "Counts only with a quantity that the owner accepts.",
    standing: ({ acceptedQuantity }) =>
      acceptedQuantity === null ? leftOut("A unit price counts only with a quantity that the owner accepts.") : counts,
  },
  bond: { label: "Bond", rule: "Always counts.", standing: always },
  tax: { label: "Tax", rule: "Always counts.", standing: always },
  freight: { label: "Freight", rule: "Always counts.", standing: always },
  "owner-furnished": {
    label: "Bought by the owner",
    rule: "Always counts as the owner’s own cost, never as the bidder’s price.",
    standing: always,
  },
  option: {
    label: "Option",
    rule: "Counts once the owner takes it, and only if it is paid before it expires.",
    standing: ({ taken, expires }, line, setting) => {
      if (taken === "no") return leftOut(`The owner has not taken this option; it stays open until ${expires}.`);
      const due = dueDate(line, setting);
      return due <= expires
        ? counts
        : leftOut(`This option expires on ${expires}, before it would first be paid on ${due}.`);
    },
  },
};

/** Whether a line counts in the sum of its bid, and why not if it doesn't. */
export const standingOf = <K extends RoleKind>(line: PriceLine, setting: RoleSetting): Standing => {
  const role = line.role as Extract<Role, { kind: K }>;
  return priceRoles[role.kind as K].standing(role, line, setting);
};
