"use client";
import { priceRoles, type RoleKind } from "#lib/cost";
import { type Choice, ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { TextField } from "../../../../_components/form/text-field";

const roles: readonly Choice[] = Object.entries(priceRoles).map(([value, { label }]) => ({ value, label }));
const templates = {
  "base-bid": {},
  "alternate-add": { accepted: "no" },
  "alternate-deduct": { accepted: "no" },
  allowance: {},
  "unit-price": { acceptedQuantity: "" },
  bond: {},
  tax: {},
  freight: {},
  "owner-furnished": {},
  option: { expires: "", taken: "no" },
};
const noOrYes: readonly Choice[] = [
  { value: "no", label: "No" },
  { value: "yes", label: "Yes" },
];

/** What place a price has in its bid, which settles whether it counts. */
export const RoleFields = ({ name }: { name: string }) => (
  <KindField<RoleKind>
    name={name}
    label="Place in the bid"
    choices={roles}
    templates={templates}
    fields={(kind) => <OfRole name={name} kind={kind} />}
  />
);

function OfRole({ name, kind }: { name: string; kind: RoleKind }) {
  switch (kind) {
    case "alternate-add":
    case "alternate-deduct":
      return <ChoiceField name={`${name}.accepted`} label="Accepted by the owner" choices={noOrYes} />;
    case "unit-price":
      return (
        <TextField
          name={`${name}.acceptedQuantity`}
          label="Quantity that the owner accepts"
          hint="Empty: none, and the price does not count."
        />
      );
    case "option":
      return (
        <>
          <TextField name={`${name}.expires`} label="Open until" hint="Year-month-day, for instance 2027-12-31." />
          <ChoiceField name={`${name}.taken`} label="Taken by the owner" choices={noOrYes} />
        </>
      );
    default:
      return null;
  }
}
