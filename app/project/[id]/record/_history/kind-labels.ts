import type { RecordedKind } from "#lib/store";

/** What an entry is about, as people read it. */
export const kindLabels: Readonly<Record<RecordedKind, string>> = {
  project: "Project",
  brief: "Brief",
  requirements: "Requirements",
  bid: "Bid",
  campaign: "Field tests",
  costing: "Levelling and the owner’s figures",
  recommendation: "The owner’s words in the recommendation",
  attachment: "Attachment",
  specification: "Section, systems and names",
  issue: "Section as given out",
  people: "People and roles",
  procedure: "Stages and amendments",
  committee: "Committee",
  scoresheet: "Scoresheet",
  "sealed-prices": "Sealed prices",
  contract: "What was awarded and what is measured",
  submittal: "Submittal",
  delivery: "Deliveries and placing",
  substitution: "Request for substitution",
  release: "Link for the public",
  refusal: "Refused attempts",
};
