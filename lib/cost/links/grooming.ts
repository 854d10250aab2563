import { formatValue, measured, succeeded } from "#lib/quantity";
import { addedLine } from "./added-line";
import { notGiven, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Hours of grooming from the hours of use: heavy infill stays in its place longer. */
export const grooming: TechnicalLink = {
  id: "grooming",
  label: "Grooming",
  does: "Takes hours of grooming for each hour of use, by the class of the infill, and prices them at a wage.",
  parameters: ["groomingShareHeavy", "groomingShareOther", "wage"],
  byName: { words: /groom|brush/i, paid: "again" },
  item: "grooming-contract",
  category: "operation-and-maintenance",
  compute: ({ facts, parameters: { groomingShareHeavy, groomingShareOther, wage } }) => {
    if (wage === null) return notGiven("the wage of an hour");
    const isHeavy = facts.weightClass === "heavy";
    const share = isHeavy ? groomingShareHeavy : groomingShareOther;
    const hours = measured("time", facts.hoursPerYear * share.value, "h");
    return succeeded({
      kind: "adds",
      line: addedLine(grooming, {
        ...{ kind: "yearly", from: null, to: null, escalation: null },
        amount: {
          kind: "per-unit",
          quantity: {
            ...workedOut("time", hours),
            asEntered: `${Number((facts.hoursPerYear * share.value).toPrecision(4))} h`,
          },
          unitPrice: wage,
        },
      }),
      working: {
        formula: "grooming a year = hours of use × hours of grooming for each hour of use × wage",
        inputs: [
          {
            label: "Hours of use a year",
            text: formatValue("yearlyUse", facts.hoursPerYear, "us"),
            from: { kind: "brief", field: "use.hoursPerYear" },
          },
          isHeavy
            ? parameterInput("Grooming of heavy infill", "groomingShareHeavy", share)
            : parameterInput("Grooming of other infill", "groomingShareOther", share),
          parameterInput("Wage", "wage", wage),
        ],
        assumptions:
          facts.weightClass === "may-be-heavy" || facts.weightClass === "unknown"
            ? ["Whether the infill is heavy is not settled; it is groomed as if it were not."]
            : [],
        source:
          "derived; one hour of grooming for ten hours of use after trade interviewees, weak; the rest common practice, no source",
      },
    });
  },
};
