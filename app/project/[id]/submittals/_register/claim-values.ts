import { type ClaimInput, type ClaimText, claimFields } from "#lib/claim";

/** A stated value as forms edit it: every field is there, as text. */
export type ClaimValues = { -readonly [Field in keyof ClaimText]: string };

const otherwise: Readonly<Partial<ClaimText>> = { accreditation: "not-stated", build: "not-stated" };

export const filledClaim = (claim: ClaimInput): ClaimValues =>
  Object.fromEntries(
    (["id", ...claimFields] as const).map((field) => [field, claim[field] ?? otherwise[field] ?? ""]),
  ) as ClaimValues;

/** A value before anything but its property is typed. */
export const emptyClaim = (id: string, property: string, condition = ""): ClaimValues =>
  filledClaim({ id, property, figure: "", condition, evidence: "stated" });
