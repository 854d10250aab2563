"use client";
import Link from "next/link";
import { evidenceLevels } from "#lib/evaluation";
import { gateAsTyped } from "../../../requirements/_components/criterion-kinds";
import { type CriterionText, measureOf } from "../../../requirements/_components/measure-choices";
import styles from "./clauses.module.css";

const roleOf = ({ gate, valueFunction }: CriterionText): string => {
  if (gate.kind === "none") return valueFunction.kind === "none" ? "Neither gate nor score" : "Scores";
  return valueFunction.kind === "none" ? "Gate" : "Gate and score";
};

/** What the criterion says of a requirement, to be read here and changed there. */
export function FromCriterion({ project, criterion }: { project: string; criterion: CriterionText }) {
  const { id, measure, gate, reason, evidence } = criterion;
  const limit = gateAsTyped(gate);
  const least = evidenceLevels.find(({ level }) => level === evidence.least)?.label ?? evidence.least;
  return (
    <div className={styles.criterion}>
      <p className={styles.previewHead}>
        From the criterion. <Link href={`/project/${project}/requirements#${id}`}>Change it under Requirements</Link>
      </p>
      <dl>
        <Said label="Property" words={measureOf(measure)?.label ?? measure} />
        <Said label="Limit" words={limit === "" ? "None: it is not asked for, it only scores" : limit} />
        <Said label="In the evaluation" words={roleOf(criterion)} />
        <Said label="Least evidence" words={least} />
        <Said label="Reason" words={reason} />
      </dl>
    </div>
  );
}

function Said({ label, words }: { label: string; words: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{words}</dd>
    </div>
  );
}
