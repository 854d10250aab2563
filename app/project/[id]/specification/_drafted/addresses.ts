import type { RequirementsText } from "#lib/evaluation";
import { type BlankPlace, blankPlaces, type Requirement } from "#lib/requirement";
import { filledClauses } from "../clauses/_components/clause-values";

/** Where in the app the owner puts something right. */
export type Addresses = Readonly<{
  clause: (requirement: string, field?: string) => string;
  submittal: (id: string) => string;
  blank: (asked: string) => string | null;
}>;

const factFields: Readonly<Record<Extract<BlankPlace, { kind: "fact" }>["fact"], string>> = {
  project: "brief#name",
  owner: "brief#owner",
  field: "brief#field",
  hoursOfUse: "brief#use.hoursPerYear",
  climate: "brief#climate.description",
  studyPeriod: "cost/conventions",
  discountRate: "cost/conventions",
  baseDate: "cost/conventions",
  costTiming: "cost/conventions",
  testPoints: "requirements#impact.testLocations",
  outlook: "requirements#impact.horizonYears",
};

/** The addresses of one project’s fields, by what they hold. */
export function addressesOf(project: string, text: RequirementsText, requirements: readonly Requirement[]): Addresses {
  const base = `/project/${project}`;
  const clauses = filledClauses(text).clauses;
  const places = blankPlaces(requirements);
  const clause = (id: string, field?: string) => {
    const requirement = requirements.find((each) => each.id === id);
    const index = clauses.findIndex((each) =>
      requirement?.criterion ? each.criterion === requirement.criterion.id : each.id === id,
    );
    return `${base}/specification/clauses#clauses.${index}${field === undefined ? "" : `.${field}`}`;
  };
  return {
    clause,
    submittal: (id) =>
      `${base}/specification/clauses#submittals.${(text.submittals ?? []).findIndex((each) => each.id === id)}`,
    blank(asked) {
      const place = places.get(asked);
      if (place === undefined) return null;
      switch (place.kind) {
        case "section":
          return `${base}/specification/section#filledIn.${place.id}`;
        case "clause":
          return clause(place.requirement, place.field);
        case "fact":
          return `${base}/${factFields[place.fact]}`;
      }
    },
  };
}
