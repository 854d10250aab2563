import { matchMethod, methodOf } from "#lib/claim";
import { type Project, projectRequirements, type Requirements } from "#lib/evaluation";
import { type FieldShape, fieldArea, sportFields } from "#lib/field";
import { intervalOfFigure } from "#lib/figure";
import { formatInterval } from "#lib/quantity";
import { type DraftingInput, type SectionFacts, startingSpecification } from "#lib/requirement";
import { dateInWords, inflationWords, moneyName, timingWords } from "../conventions-in-words";

/** The shape as typed, or what it is called; empty where only the area is known. */
function shapeInWords(shape: FieldShape): string {
  switch (shape.kind) {
    case "rectangle":
      return `${shape.length.asEntered} by ${shape.width.asEntered}, `;
    case "sport":
      return `${sportFields[shape.sport].label} with ${shape.runOff.asEntered} beyond the lines, `;
    case "polygon-by-coordinates":
    case "polygon-by-sides":
    case "measured-area":
      return "";
  }
}

function sizeInWords(shape: FieldShape): string {
  const area = intervalOfFigure(fieldArea(shape));
  if (area === null) return "";
  return `${shapeInWords(shape)}${formatInterval("area", area, "us")} (${formatInterval("area", area, "metric")})`;
}

const sentence = (text: string) => (text === "" ? "" : `${text.replace(/\.$/, "")}.`);
const joined = (...parts: readonly string[]) =>
  parts
    .filter((part) => part !== "")
    .join(" ")
    .replace(/\.$/, "");

const wholeNumber = new Intl.NumberFormat("en-US", { maximumFractionDigits: 0 });

/** What the level of later years rests on, so that a bidder can work it out as well. */
function outlookInWords({ method, horizonYears, ownersDrift }: Requirements["impact"]): string {
  const { low, likely, high } = ownersDrift;
  const known = matchMethod(method);
  const by = known === null || known === "not-stated" ? "" : ` by ${methodOf(known).designation}`;
  return `worked out for year ${horizonYears} from the levels that the bid states${by} for the System new and aged; where these are too few, with a yearly change of ${low.asEntered} to ${high.asEntered}, likely ${likely.asEntered}`;
}

function factsOf({ brief, requirements }: Project): SectionFacts {
  const { field, use, climate, money } = brief;
  const frost = { yes: "Frost occurs.", no: "No frost.", "not-stated": "" }[climate.frost];
  const heat = climate.hottestSummerAir === null ? "" : `Hottest summer air: ${climate.hottestSummerAir.asEntered}.`;
  return {
    project: brief.name,
    owner: brief.owner,
    field: sizeInWords(field),
    hoursOfUse: joined(`${wholeNumber.format(use.hoursPerYear.value)} hours a year.`, sentence(use.description)),
    climate: joined(sentence(climate.description), heat, frost),
    studyPeriod: `${money.studyPeriod.years} years from ${dateInWords(money.baseDate)}`,
    discountRate: `${money.realRate.asEntered} a year over general inflation, for costs in ${moneyName(money)} ${inflationWords(money)}`,
    baseDate: dateInWords(money.baseDate),
    costTiming: timingWords[money.timing],
    testPoints: String(requirements.impact.testLocations),
    outlook: outlookInWords(requirements.impact),
  };
}

/** All that the section of a project is drafted from. */
export function sectionInput(project: Project): DraftingInput {
  const { number, related, choices, filledIn } = project.specification ?? startingSpecification;
  return {
    ...{ number, related, choices, filledIn },
    facts: factsOf(project),
    requirements: projectRequirements(project.requirements),
    submittals: project.requirements.submittals,
  };
}
