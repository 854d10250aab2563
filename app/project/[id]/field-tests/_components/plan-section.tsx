import Link from "next/link";
import { explainPlan, type PlanProblem, planLayouts, type TestPlan, testProtocols } from "#lib/fieldtest";
import type { Result, UnitSystem } from "#lib/quantity";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import type { PlanChoice } from "../_tests/plan-choice";
import styles from "./ask-form.module.css";
import { PlanMap } from "./plan-map";
import { PlanTable } from "./plan-table";

export type PlanRead = Result<TestPlan, PlanProblem | readonly string[]>;

const isList = (problem: PlanProblem | readonly string[]): problem is readonly string[] => Array.isArray(problem);

/** Where to test: the question, the drawing and the coordinates. */
export function PlanSection({
  project,
  choice,
  plan,
  units,
}: {
  project: string;
  choice: PlanChoice;
  plan: PlanRead;
  units: UnitSystem;
}) {
  return (
    <section aria-labelledby="plan">
      <h2 id="plan">Test plan</h2>
      <p>
        Where to drop the missile: first the spots that the marks of the sports point to, then places that fill the
        largest gaps, then spots of your own. The same choice always gives the same plan.
      </p>
      <PlanForm choice={choice} units={units} />
      {plan.ok ? (
        <DrawnPlan plan={plan.value} units={units} />
      ) : (
        <div role="alert" className={styles.problem}>
          {(isList(plan.problem) ? plan.problem : [explainPlan(plan.problem)]).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {!isList(plan.problem) && plan.problem.kind === "no-outline" ? (
            <p>
              <Link href={`/project/${project}/brief#field.kind`}>Describe the field in the brief</Link>
            </p>
          ) : null}
        </div>
      )}
    </section>
  );
}

function PlanForm({ choice, units }: { choice: PlanChoice; units: UnitSystem }) {
  return (
    <form action="#plan" method="get" className={`${styles.form} screen-only`}>
      <fieldset className={`${styles.choices} ${styles.wide}`}>
        <legend>Marks on the field</legend>
        {Object.entries(planLayouts).map(([id, { label }]) => (
          <label key={id}>
            <input
              type="checkbox"
              name="layouts"
              value={id}
              defaultChecked={choice.layouts.some((layout) => layout === id)}
            />
            {label}
          </label>
        ))}
      </fieldset>
      <div className={styles.field}>
        <label htmlFor="plan-locations">Number of locations</label>
        <input id="plan-locations" name="locations" inputMode="numeric" defaultValue={choice.locations} />
      </div>
      <div className={`${styles.field} ${styles.wide}`}>
        <label htmlFor="plan-spots">Spots of your own, one on each line</label>
        <span id="plan-spots-hint" className={styles.hint}>
          Name, then x and y: “{units === "us" ? "drain at the gate, 100 ft, 5 ft" : "drain at the gate, 30 m, 2 m"}”.
        </span>
        <textarea
          id="plan-spots"
          name="spots"
          rows={2}
          defaultValue={choice.spots}
          aria-describedby="plan-spots-hint"
        />
      </div>
      <div>
        <button type="submit">Draw the plan</button>
      </div>
    </form>
  );
}

function DrawnPlan({ plan, units }: { plan: TestPlan; units: UnitSystem }) {
  const { outline, locations, notes, source } = plan;
  const count = (kind: (typeof locations)[number]["kind"]) =>
    locations.filter((location) => location.kind === kind).length;
  const summary = `${locations.length} locations: ${count("by-the-marks")} by the marks, ${count("fills-a-gap")} that fill gaps (dashed), ${count("extra")} of the owner’s own (square). A ring is a wear zone: with a full edge and shaded warm where play is heavy, with a dotted one and green where it is light.`;
  return (
    <>
      <ChartFrame
        title="Where to test, to scale"
        summary={summary}
        draw={(width) => (
          <PlanMap plan={plan} width={width} units={units} label={`Plan of the field with ${summary.split(":")[0]}`} />
        )}
        table={<PlanTable locations={locations} units={units} />}
      />
      <div className={styles.onPaper}>
        <PlanTable locations={locations} units={units} />
      </div>
      <ul>
        <li>Coordinates are measured from {outline.origin}.</li>
        {notes
          .filter((note) => !note.includes(outline.origin))
          .map((note) => (
            <li key={note}>{note}</li>
          ))}
      </ul>
      <p className="soft small">Source of the plan: {source}.</p>
      <details className="printed-open">
        <summary>How many locations methods ask for</summary>
        <ul>
          {testProtocols.map(({ id, label, editions, minutesBetweenDrops, source: from }) => (
            <li key={id}>
              {label}: {minutesBetweenDrops === 1 ? "1 minute" : `${minutesBetweenDrops} minutes`} between drops on one
              spot; editions: {editions}. Source: {from}.
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
