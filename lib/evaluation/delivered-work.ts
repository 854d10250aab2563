import { gateDecision } from "#lib/criteria";
import { fieldArea } from "#lib/field";
import { type Figure, intervalOfFigure } from "#lib/figure";
import { intervalOf, measured, parseQuantity, type Quantity } from "#lib/quantity";
import { limitInWords } from "#lib/requirement";
import {
  type DeliveredInfill,
  type DepthReadings,
  deliveredInfill,
  depthReadings,
  startingDelivery,
  widenedLimit,
} from "#lib/submittal";
import { awardedBid } from "./awarded-bid";
import { infillFigures, knownInfill } from "./infill-figures";
import type { Bid, InfillClaim, Project } from "./model";
import { squareMetresOf } from "./project-money";
import { reviewedRequirements } from "./reviewed-requirements";

/** What was delivered against what was bid and specified. */
export type DeliveredWork = Readonly<{
  components: readonly Readonly<{ label: string; wanted: Quantity<"arealDensity">; found: DeliveredInfill }>[];
  /** What the delivered mass comes to over the field; null while a component has no ticket or nobody’s bid was taken. */
  figures: Readonly<{ totalArealDensity: Figure<"arealDensity">; depth: Figure<"length"> }> | null;
  /** How total and depth stand to the limits of the specification, a sentence each. */
  sentences: readonly string[];
  depths: DepthReadings;
}>;

/** The infill of the bid with what was delivered in place of what was claimed. */
function deliveredBid(bid: Bid, found: ReadonlyMap<string, DeliveredInfill>): Bid | null {
  const components = bid.infill.components.flatMap((component): readonly InfillClaim[] => {
    const delivered = found.get(component.id);
    if (delivered === undefined || delivered.tickets === 0) return [];
    const { low, high } = delivered.arealDensity;
    const text = low === high ? `${low} kg/m²` : `${low} to ${high} kg/m²`;
    const read = parseQuantity("arealDensity", text);
    return read.ok ? [{ ...component, arealDensity: read.value }] : [];
  });
  return components.length === bid.infill.components.length && components.length > 0
    ? { ...bid, infill: { ...bid.infill, components } }
    : null;
}

/** A range that a bid gives is wanted as its middle, with half its width on top of the tolerance. */
function wantedOf(component: InfillClaim, share: number) {
  const { low, high } = intervalOf(component.arealDensity.reading);
  const [from, to] = [Number.isFinite(low) ? low : high, Number.isFinite(high) ? high : low];
  const middle = (from + to) / 2;
  return {
    arealDensity: measured("arealDensity", middle),
    tolerance: middle === 0 ? share : share + (to - from) / 2 / middle,
  };
}

function limitSentences(project: Project, figures: DeliveredWork["figures"]): readonly string[] {
  if (figures === null) return [];
  const spans = {
    "infill-total-areal-density": { figure: figures.totalArealDensity, what: "The delivered infill per area" },
    "infill-depth": { figure: figures.depth, what: "The depth that follows from the delivered mass" },
  } as const;
  return reviewedRequirements(project.requirements).flatMap(({ isOn, limit, subject, tolerance, label }) => {
    const property = subject?.property;
    if (!isOn || limit === null || (property !== "infill-total-areal-density" && property !== "infill-depth"))
      return [];
    const { figure, what } = spans[property];
    const span = intervalOfFigure(figure);
    if (span === null) return [];
    const verb = { meets: "meets", "falls-short": "does not meet", "not-decided": "lies across" } as const;
    const outcome = gateDecision(widenedLimit(limit, tolerance?.value ?? 0), span).kind;
    return [`${what} ${verb[outcome]} the clause “${label}”, ${limitInWords(limit)}.`];
  });
}

/** The delivered infill and its depth against the bid that was taken and the specification. */
export function deliveredWork(project: Project): DeliveredWork {
  const { delivery = startingDelivery, brief } = project;
  const field = fieldArea(brief.field);
  const area = squareMetresOf(field);
  const bid = awardedBid(project)?.bid ?? null;
  const { tickets, leftOver, massTolerance, mostMoisture, depthWanted, averageTolerance, placeTolerance } = delivery;
  const known = bid === null ? null : knownInfill(bid, brief.ownMaterials);
  const components =
    bid === null
      ? []
      : bid.infill.components.map((component) => {
          const left = leftOver.filter((each) => each.component === component.id);
          const found = deliveredInfill(
            {
              component: component.id,
              ...wantedOf(component, massTolerance.value),
              leftOver: measured(
                "mass",
                left.reduce((sum, { mass }) => sum + mass.value, 0),
              ),
              mostMoisture: mostMoisture.value,
            },
            tickets,
            area,
          );
          const label =
            known?.system.components.find(({ id }) => id === component.id)?.material.label ?? component.material;
          return { label, wanted: component.arealDensity, found };
        });
  const placed =
    bid === null ? null : deliveredBid(bid, new Map(components.map(({ found }) => [found.component, found])));
  const figures = placed === null ? null : infillFigures(placed, knownInfill(placed, brief.ownMaterials), field);
  return {
    components,
    figures: figures === null ? null : { totalArealDensity: figures.totalArealDensity, depth: figures.depth },
    sentences: limitSentences(project, figures),
    depths: depthReadings(
      delivery.depths.map(({ value }) => value),
      {
        depth: depthWanted?.value ?? measured("length", 0),
        average: averageTolerance.value,
        place: placeTolerance.value,
      },
    ),
  };
}
