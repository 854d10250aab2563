import type { AskedOf, Criterion, Measure } from "#lib/criteria";
import { type CurrencyCode, currencies, type ExactQuantity, writtenCurrency } from "#lib/quantity";
import type { Project } from "./model";

const inMoneyOf = (measure: Measure, currency: CurrencyCode): Measure =>
  measure.dimension.startsWith("money") ? { ...measure, currency } : measure;

const askedIn = (askedOf: AskedOf, currency: CurrencyCode): AskedOf =>
  askedOf.kind === "every-bid" ? askedOf : { ...askedOf, measure: inMoneyOf(askedOf.measure, currency) };

/** The criteria of a project, money in its currency. */
export const criteriaOf = ({ brief, requirements }: Pick<Project, "brief" | "requirements">): readonly Criterion[] =>
  requirements.criteria.map((criterion) => ({
    ...criterion,
    measure: inMoneyOf(criterion.measure, brief.money.currency),
    askedOf: askedIn(criterion.askedOf, brief.money.currency),
  }));

const isWritten = (field: unknown): field is ExactQuantity =>
  typeof field === "object" && field !== null && "asEntered" in field && "dimension" in field;

/** Every limit and anchor of a criterion, as written. */
function written(rule: unknown): readonly ExactQuantity[] {
  if (isWritten(rule)) return [rule];
  return typeof rule === "object" && rule !== null ? Object.values(rule).flatMap(written) : [];
}

/**
 * What stands in the way of judging money: a limit or an anchor that names another currency than the project's. A bare
 * dollar sign is the money of the project. Null where nothing does.
 */
export function foreignAnchor({ measure: { currency }, gate, valueFunction }: Criterion): string | null {
  if (currency === undefined) return null;
  const foreign = [...written(gate), ...written(valueFunction)].find(({ asEntered }) => {
    const { code } = writtenCurrency(asEntered);
    return code !== null && code !== currency;
  });
  return foreign === undefined
    ? null
    : `limits and anchors in ${currencies[currency].label}: one is written as “${foreign.asEntered}”`;
}
