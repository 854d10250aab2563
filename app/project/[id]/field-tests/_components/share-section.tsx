import { locationsNeeded, locationsNeededByNormal } from "#lib/fieldtest";
import { explainShortfall, type Figure, formatFigure } from "#lib/figure";
import { formatValue, type In, type Result, type UnitSystem } from "#lib/quantity";
import { ShowWorking } from "../../../../_components/working";
import type { PlanChoice } from "../_tests/plan-choice";
import type { ShareAsked, ShareChoice } from "../_tests/share-choice";
import styles from "./ask-form.module.css";

/** How many locations show what is asked of the whole field, in two ways. */
export function ShareSection({
  project,
  choice,
  asked,
  limit,
  plan,
  units,
}: {
  project: string;
  choice: ShareChoice;
  asked: Result<ShareAsked, readonly string[]>;
  limit: In<"g">;
  /** Goes along, so that the plan above stays as it is. */
  plan: PlanChoice;
  units: UnitSystem;
}) {
  return (
    <section aria-labelledby="how-many">
      <h2 id="how-many">How many locations are needed</h2>
      <p>
        A test of some spots says something of the whole field only with a confidence. More spots, or a larger share
        that may lie above the limit, raise it.
      </p>
      <ShareForm choice={choice} plan={plan} />
      {asked.ok ? (
        <Answers project={project} asked={asked.value} limit={limit} units={units} />
      ) : (
        <div role="alert" className={styles.problem}>
          {asked.problem.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
    </section>
  );
}

const fields = [
  { name: "share", label: "Share of the field allowed above the limit" },
  { name: "confidence", label: "Confidence" },
  { name: "allowed", label: "Locations allowed above the limit" },
  { name: "mean", label: "Expected mean, if known" },
  { name: "deviation", label: "Expected standard deviation, if known" },
] as const satisfies readonly Readonly<{ name: keyof ShareChoice; label: string }>[];

function ShareForm({ choice, plan }: { choice: ShareChoice; plan: PlanChoice }) {
  return (
    <form action="#how-many" method="get" className={`${styles.form} screen-only`}>
      {plan.layouts.map((layout) => (
        <input key={layout} type="hidden" name="layouts" value={layout} />
      ))}
      <input type="hidden" name="locations" value={plan.locations} />
      <input type="hidden" name="spots" value={plan.spots} />
      {fields.map(({ name, label }) => (
        <div key={name} className={styles.field}>
          <label htmlFor={`share-${name}`}>{label}</label>
          <input id={`share-${name}`} name={name} defaultValue={choice[name]} autoComplete="off" />
        </div>
      ))}
      <div>
        <button type="submit">Work it out</button>
      </div>
    </form>
  );
}

const percent = (share: In<"1">) => formatValue("fraction", share, { unit: "%", decimals: 0 });
const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 1 });
const many = (count: Figure<"count">, units: UnitSystem) =>
  count.kind === "known" && count.value === 1 ? "1 location" : `${formatFigure(count, units)} locations`;

function Answers({
  project,
  asked: { question, allowed, expected },
  limit,
  units,
}: {
  project: string;
  asked: ShareAsked;
  limit: In<"g">;
  units: UnitSystem;
}) {
  const counted = locationsNeeded(question, allowed);
  const claim = `at most ${percent(question.share)} of the field lies at or above the limit of ${grams(limit)}, with a confidence of ${percent(question.confidence)}`;
  return (
    <div className="stack" role="status">
      {counted.kind === "unknown" ? (
        <p>{explainShortfall(counted.because)}</p>
      ) : (
        <div>
          <p>
            <strong>By counting:</strong> {many(counted, units)}, of which{" "}
            {allowed === 0 ? "none" : allowed === 1 ? "at most 1" : `at most ${allowed}`} may be at or above the limit,
            show that {claim}.
          </p>
          <ShowWorking project={project} of="locations needed by counting" working={counted.working} />
        </div>
      )}
      {expected === null ? (
        <p>
          <strong>By the spread of the levels:</strong> give an expected mean and standard deviation, and the number by
          the tolerance limit follows.
        </p>
      ) : (
        <ByTheSpread project={project} asked={{ question, expected }} limit={limit} units={units} claim={claim} />
      )}
    </div>
  );
}

function ByTheSpread({
  project,
  asked: { question, expected },
  limit,
  units,
  claim,
}: {
  project: string;
  asked: Readonly<{ question: ShareAsked["question"]; expected: NonNullable<ShareAsked["expected"]> }>;
  limit: In<"g">;
  units: UnitSystem;
  claim: string;
}) {
  const margin = (limit - expected.mean) / expected.deviation;
  const needed = locationsNeededByNormal(question, margin);
  const found = `With a mean of ${grams(expected.mean)} and a standard deviation of ${grams(expected.deviation)}`;
  return needed.kind === "unknown" ? (
    <p>
      <strong>By the spread of the levels:</strong> {found}: {explainShortfall(needed.because)}
    </p>
  ) : (
    <div>
      <p>
        <strong>By the spread of the levels:</strong> {found}, {many(needed, units)} show by the tolerance limit that{" "}
        {claim}. It holds only where the levels are spread like a bell curve.
      </p>
      <ShowWorking project={project} of="locations needed by the spread" working={needed.working} />
    </div>
  );
}
