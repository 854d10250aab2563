import { matchMethod, methodOf } from "#lib/claim";
import type { CompletenessFacts } from "#lib/procedure";
import type { StandingDocuments } from "./project-documents";
import { peopleIn } from "./standing-project";

function methodName(id: string): string {
  const method = matchMethod(id);
  return method === null || method === "not-stated" ? id : methodOf(method).designation;
}

/** What the completeness check looks at, read off the documents. @throws RangeError for a project without brief or requirements */
export function completenessFacts(standing: StandingDocuments): CompletenessFacts {
  const [requirements] = standing("requirements");
  const [brief] = standing("brief");
  if (requirements === undefined || brief === undefined) throw new RangeError("a project has a brief and requirements");
  const { impact, criteria } = requirements.model;
  const { studyPeriod, realRate, baseDate } = brief.model.money;
  return {
    ...{ impact, criteria, people: peopleIn(standing) },
    impactMethod: methodName(impact.method),
    conventions: `Costs count over ${studyPeriod.years} years at ${realRate.asEntered} a year, in prices of ${baseDate}.`,
  };
}
