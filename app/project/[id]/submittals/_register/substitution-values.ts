import type { SubstitutionText } from "#lib/evaluation";
import { type ClaimValues, filledClaim } from "./claim-values";

/** A request for substitution as forms edit it: every field is there. */
export type SubstitutionValues = Required<Omit<SubstitutionText, "claims" | "infill">> & {
  claims: ClaimValues[];
  infill: NonNullable<SubstitutionText["infill"]>;
};

export const filledSubstitution = (text: SubstitutionText): SubstitutionValues => ({
  item: text.item,
  requested: text.requested ?? "",
  reason: text.reason ?? "",
  claims: (text.claims ?? []).map(filledClaim),
  infill: text.infill ?? { placement: "layered", components: [] },
  priceChange: text.priceChange ?? "",
  decision: text.decision ?? "",
  decided: text.decided ?? "",
  note: text.note ?? "",
});
