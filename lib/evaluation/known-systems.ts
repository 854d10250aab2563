import { intervalOfFigure } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import type { KnownSystem, LimitClause, OtherSystem, Requirement, SystemFigure } from "#lib/requirement";
import { measuredFigure } from "./evaluate";
import type { Evaluation, Project } from "./model";
import { projectRequirements } from "./project-requirements";

/** Most clauses and systems that are held against each other. */
const most = 60;

/** What the competition check takes up of a project, and how much stays out because there is too much of it. */
export type CompetitionSetting = Readonly<{
  clauses: readonly LimitClause[];
  systems: readonly KnownSystem[];
  leftOut: Readonly<{ clauses: number; systems: number }>;
}>;

/** The requirements that keep a system out: what stands in the text and fixes a limit or asks for something. */
const barring = (requirements: readonly Requirement[]): readonly Requirement[] =>
  requirements.filter(({ isOn, limit, asked }) => isOn && (limit !== null || asked !== ""));

const asClause = ({ id, label, subject, limit }: Requirement): LimitClause => ({
  ...{ id, label, limit },
  dimension: subject?.dimension ?? "number",
});

const entriesOf = (
  requirements: readonly Requirement[],
  figureOf: (requirement: Requirement) => SystemFigure | null,
): Readonly<Record<string, SystemFigure>> =>
  Object.fromEntries(
    requirements.flatMap((requirement) => {
      const figure = figureOf(requirement);
      return figure === null ? [] : [[requirement.id, figure]];
    }),
  );

function answerTo(requirement: string, answers: OtherSystem["answers"]): SystemFigure | null {
  const answer = answers.find(({ clause }) => clause === requirement);
  return answer === undefined ? null : { kind: "answer", meets: answer.meets };
}

/** The bids by what they show, whoever shows it: the check asks what the systems could do, not who proved it. */
function bidsAsSystems({ bids, specification }: Project, evaluation: Evaluation, requirements: readonly Requirement[]) {
  return evaluation.bids.flatMap((evaluated): readonly KnownSystem[] => {
    const bid = bids.find(({ id }) => id === evaluated.id);
    if (bid === undefined) return [];
    const facts = { ...evaluated, bid, area: evaluation.area };
    const answers = (specification?.bidAnswers ?? []).filter((answer) => answer.bid === bid.id);
    const figures = entriesOf(requirements, ({ id, subject, criterion }) => {
      if (subject === null) return answerTo(id, answers);
      const span = intervalOfFigure(measuredFigure(facts, { id: criterion?.id ?? id, measure: subject }).figure);
      return span === null ? null : { kind: "figure", span };
    });
    return [{ id: `bid-${bid.letter}`, label: `Bid ${bid.letter}`, figures }];
  });
}

function asSystem({ id, label, figures, answers }: OtherSystem, requirements: readonly Requirement[]): KnownSystem {
  return {
    id,
    label,
    figures: entriesOf(requirements, (requirement) => {
      const figure = figures.find(({ measure }) => measure === requirement.subject?.id)?.figure;
      if (figure !== undefined) return { kind: "figure", span: intervalOf(figure.reading) };
      return answerTo(requirement.id, answers);
    }),
  };
}

/** Clauses and systems of a project as the competition check takes them: its bids first, then what the owner entered. */
export function competitionSetting(project: Project, evaluation: Evaluation): CompetitionSetting {
  const requirements = barring(projectRequirements(project.requirements));
  const systems = [
    ...bidsAsSystems(project, evaluation, requirements),
    ...(project.specification?.systems ?? []).map((system) => asSystem(system, requirements)),
  ];
  return {
    clauses: requirements.slice(0, most).map(asClause),
    systems: systems.slice(0, most),
    leftOut: {
      clauses: Math.max(0, requirements.length - most),
      systems: Math.max(0, systems.length - most),
    },
  };
}
