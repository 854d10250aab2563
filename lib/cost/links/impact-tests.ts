import { measured, succeeded } from "#lib/quantity";
import { addedLine } from "./added-line";
import { notGiven, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Yearly hardness tests as the test plan asks for them. */
export const impactTests: TechnicalLink = {
  id: "impact-tests",
  label: "Yearly hardness tests",
  does: "Counts the visits that the test plan needs every year and prices each visit.",
  parameters: ["testVisitsPerYear", "locationsPerVisit", "testVisitPrice"],
  byName: { words: /(impact|hardness|g-?max).*test|test.*(impact|hardness|g-?max)/i, paid: "again" },
  item: "yearly-tests",
  category: "testing",
  compute: ({ facts, parameters: { testVisitsPerYear, locationsPerVisit, testVisitPrice } }) => {
    if (testVisitPrice === null) return notGiven("the price of a test visit");
    const perRound = locationsPerVisit === null ? 1 : Math.ceil(facts.testLocations / locationsPerVisit.value);
    const visits = measured("count", testVisitsPerYear.value * perRound);
    return succeeded({
      kind: "adds",
      line: addedLine(impactTests, {
        ...{ kind: "yearly", from: null, to: null, escalation: null },
        amount: {
          kind: "per-unit",
          quantity: { ...workedOut("count", visits), asEntered: `${visits} ${visits === 1 ? "visit" : "visits"}` },
          unitPrice: testVisitPrice,
        },
      }),
      working: {
        formula: "tests a year = rounds a year × visits for one round × price of a visit",
        inputs: [
          parameterInput("Rounds a year", "testVisitsPerYear", testVisitsPerYear),
          {
            label: "Test locations",
            text: String(facts.testLocations),
            from: { kind: "requirements", field: "impact.testLocations" },
          },
          ...(locationsPerVisit === null
            ? []
            : [parameterInput("Locations of one visit", "locationsPerVisit", locationsPerVisit)]),
          parameterInput("Price of a visit", "testVisitPrice", testVisitPrice),
        ],
        assumptions: locationsPerVisit === null ? ["One visit tests every location."] : [],
        source: "derived from the test plan",
      },
    });
  },
};
