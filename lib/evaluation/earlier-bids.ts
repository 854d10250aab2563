import { ratingMeasure } from "#lib/criteria";
import { intervalOfFigure } from "#lib/figure";
import { dimensions, formatInterval } from "#lib/quantity";
import type { Requirement, SpecificationText } from "#lib/requirement";
import { measuredFigure } from "./evaluate";
import type { Evaluation, Project } from "./model";

type SystemText = NonNullable<SpecificationText["systems"]>[number];

/** Decimals beyond those that pages show, so that a figure copied as text stays on its side of a limit. */
const moreDecimals = 3;

/** Prices belong to their day and field, and ratings to the people who gave them. */
const isOfItsProject = ({ id, dimension }: NonNullable<Requirement["subject"]>): boolean =>
  dimension.startsWith("money") || id === ratingMeasure.id;

/**
 * The bids of another project as systems to hold clauses against: their figures as text, copied as they are now.
 */
export function earlierBids(
  requirements: readonly Requirement[],
  { project, evaluation, id }: Readonly<{ project: Project; evaluation: Evaluation; id: string }>,
): readonly SystemText[] {
  const measures = [
    ...new Map(
      requirements.flatMap(({ subject, limit }) =>
        subject === null || limit === null || isOfItsProject(subject) ? [] : [[subject.id, subject]],
      ),
    ).values(),
  ];
  return evaluation.bids.flatMap((evaluated) => {
    const bid = project.bids.find((each) => each.id === evaluated.id);
    if (bid === undefined) return [];
    const facts = { ...evaluated, bid, area: evaluation.area };
    const figures = measures.flatMap((subject) => {
      const span = intervalOfFigure(measuredFigure(facts, { id: subject.id, measure: subject }).figure);
      if (span === null) return [];
      const { unit, decimals } = dimensions[subject.dimension].us;
      const shown = { unit, decimals: decimals + moreDecimals };
      return [{ measure: subject.id, figure: formatInterval(subject.dimension, span, shown).replace("–", " to ") }];
    });
    return [
      {
        id: `${id}-${bid.letter.toLowerCase()}`,
        label: `${project.brief.name}, bid ${bid.letter}`.slice(0, 100),
        origin: "earlier-bid" as const,
        source: `Bid ${bid.letter} of the project “${project.brief.name}”, figures as they stood there`.slice(0, 300),
        figures,
        answers: [],
      },
    ];
  });
}
