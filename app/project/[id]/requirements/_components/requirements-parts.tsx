import { criteriaOf, type Evaluation, type Project, priceLineLabels } from "#lib/evaluation";
import { halfInchRule } from "#lib/impact";
import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import { CriterionCurve } from "../../_components/criterion-curve";
import { judgedBids } from "../../_components/judged-bids";

/** What the form of the requirements shows beside what is typed: each value function drawn, and what may be chosen from. */
export function requirementsParts(project: Project, evaluation: Evaluation, units: UnitSystem) {
  const bids = judgedBids(project, evaluation);
  const curves = criteriaOf(project).flatMap(({ id: criterion, label, measure, valueFunction }, row) =>
    valueFunction.kind === "none"
      ? []
      : [
          [
            criterion,
            <CriterionCurve
              key={criterion}
              row={row}
              rule={valueFunction}
              measure={measure}
              name={label}
              caption="As last saved, with the bids that show a figure"
              bids={bids}
              units={units}
            />,
          ] as const,
        ],
  );
  return {
    curves: Object.fromEntries(curves),
    ruleOfThumb: ruleOfThumb(units),
    labels: priceLineLabels(project.bids),
  };
}

/** The rule of thumb on lost infill depth, with the conditions under which it may be used. */
function ruleOfThumb(units: UnitSystem): string {
  const { depthLoss, factor, validFor, source } = halfInchRule;
  const harder = Math.round((factor - 1) * 100);
  const loss = formatValue("length", depthLoss, units);
  const levels = formatInterval("impactLevel", validFor.level, units);
  const largest = formatValue("length", validFor.largestLoss, units);
  const share = formatValue("fraction", validFor.leastPolymerShare, units);
  return `Rule of thumb (${source}): ${loss} less infill, about ${harder} % harder. It is used only for levels of ${levels} by the flat missile, losses up to ${largest}, infill with at least ${share} rubber or other elastic granules by mass, and no shock layer. Everywhere else no figure is given.`;
}
