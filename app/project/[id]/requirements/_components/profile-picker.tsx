"use client";
import { useState } from "react";
import {
  type Addition,
  type CriteriaText,
  type CriterionText,
  type Profile,
  profiles,
  withProfile,
} from "#lib/criteria";
import { formatShare } from "#lib/evaluation";
import { Scroller } from "../../../../_components/scroller";
import { askedOfAsTyped, scoreAsTyped } from "./as-typed";
import { gateAsTyped } from "./criterion-kinds";
import styles from "./library.module.css";
import { LimitList } from "./limit-list";
import { typedWeights } from "./typed-weights";
import { useTyped } from "./use-typed";

const criteriaInWords = (count: number): string => `${count} ${count === 1 ? "criterion" : "criteria"}`;

/** A set of criteria for a kind of use: chosen, looked through, put into the form. */
export function ProfilePicker({ add }: { add: (addition: Addition, said: string) => void }) {
  const { criteria, headings } = useTyped();
  const [chosen, setChosen] = useState<Profile | null>(null);
  const now: CriteriaText = { criteria, headings };
  return (
    <fieldset className={styles.profiles}>
      <legend>Profiles by use</legend>
      <p className={styles.note}>
        Each is a full set of criteria for one kind of use, with the source of every limit. It is a starting point: each
        figure and each weight is yours to change.
      </p>
      {profiles.map((profile) => (
        <label key={profile.id} className={styles.profile}>
          <input type="radio" name="profile" checked={chosen?.id === profile.id} onChange={() => setChosen(profile)} />
          <span>
            <strong>{profile.label}</strong> <span className="soft">{profile.use}</span>
          </span>
        </label>
      ))}
      {chosen === null ? null : <ProfilePreview key={chosen.id} profile={chosen} now={now} add={add} />}
    </fieldset>
  );
}

function ProfilePreview({
  profile,
  now,
  add,
}: {
  profile: Profile;
  now: CriteriaText;
  add: (addition: Addition, said: string) => void;
}) {
  const whole = withProfile({ criteria: [], headings: [] }, profile);
  const beside = withProfile(now, profile);
  const isEmpty = now.criteria.length === 0;
  const name = `the profile “${profile.label}”`;
  return (
    <div className={styles.preview}>
      {isEmpty || beside.passedOver.length === 0 ? null : (
        <p>
          {criteriaInWords(beside.passedOver.length)} of it would be left out, as something is judged by the same
          measure already: {beside.passedOver.map(({ label, judgedBy }) => `${label} (by “${judgedBy}”)`).join(", ")}.
        </p>
      )}
      {isEmpty ? null : (
        <p className={styles.note}>
          What is added beside your own criteria starts without weight, so that nothing you have weighed moves.
        </p>
      )}
      <div className="row">
        {beside.added.length === 0 ? (
          <p>Everything in it is judged already.</p>
        ) : (
          <button
            type="button"
            onClick={() => add(beside, `Added ${criteriaInWords(beside.added.length)} of ${name}.`)}
          >
            {isEmpty
              ? `Use these ${criteriaInWords(beside.added.length)}`
              : `Add the ${criteriaInWords(beside.added.length)} that nothing judges yet`}
          </button>
        )}
        {isEmpty ? null : (
          <button
            type="button"
            className="plain"
            onClick={() =>
              add(whole, `Put ${name} in the place of the ${criteriaInWords(now.criteria.length)} that stood here.`)
            }
          >
            Replace the {criteriaInWords(now.criteria.length)} that stand here
          </button>
        )}
      </div>
      <h4>What this rests on</h4>
      <LimitList limits={profile.founded} />
      <ProfileTable whole={whole} />
    </div>
  );
}

/** The criteria of a profile under their headings, with gate, score, share and source. */
function ProfileTable({ whole: { result } }: { whole: Addition }) {
  const { shares } = typedWeights({ ...result, weighing: undefined });
  const rows = result.criteria.map((criterion, at) => ({ criterion, share: shares[at] ?? 0 }));
  const groups = [
    ...result.headings.map(({ id, label }) => ({ id, label })),
    { id: "", label: "Under no heading: gates alone" },
  ].flatMap((group) => {
    const some = rows.filter(({ criterion }) => criterion.heading === group.id);
    return some.length === 0 ? [] : [{ ...group, rows: some }];
  });
  return (
    <Scroller label="Criteria of the profile">
      <table className={styles.table}>
        <caption>What it adds</caption>
        <thead>
          <tr>
            <th scope="col">Criterion</th>
            <th scope="col">Gate</th>
            <th scope="col">Score</th>
            <th scope="col" className="number">
              Share
            </th>
            <th scope="col">Where the figures come from</th>
          </tr>
        </thead>
        {groups.map(({ id, label, rows: some }) => (
          <tbody key={id}>
            <tr className={styles.groupRow}>
              <th scope="rowgroup" colSpan={3}>
                {label}
              </th>
              <td className="number">{formatShare(some.reduce((sum, { share }) => sum + share, 0))}</td>
              <td />
            </tr>
            {some.map(({ criterion, share }) => (
              <CriterionRow key={criterion.id} criterion={criterion} share={share} />
            ))}
          </tbody>
        ))}
      </table>
    </Scroller>
  );
}

function CriterionRow({ criterion, share }: { criterion: CriterionText; share: number }) {
  const asked = askedOfAsTyped(criterion);
  return (
    <tr>
      <th scope="row" className={styles.inside}>
        {criterion.label}
        {asked === "" ? null : <span className={styles.under}>{asked}</span>}
      </th>
      <td>{gateAsTyped(criterion.gate) || "–"}</td>
      <td>{scoreAsTyped(criterion) || "–"}</td>
      <td className="number">{criterion.valueFunction.kind === "none" ? "gate only" : formatShare(share)}</td>
      <td>{criterion.source}</td>
    </tr>
  );
}
