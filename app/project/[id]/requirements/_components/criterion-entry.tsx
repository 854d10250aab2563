"use client";
import { useEffect, useRef } from "react";
import { get, useFormContext } from "react-hook-form";
import { valueFunctions } from "#lib/criteria";
import { formatShare } from "#lib/evaluation";
import { CriterionFields } from "./criterion-fields";
import { gateAsTyped } from "./criterion-kinds";
import type { CriterionText } from "./measure-choices";
import styles from "./requirements.module.css";
import { typedWeights } from "./typed-weights";
import { useTyped } from "./use-typed";

/** One criterion: a line that sums it up, its fields behind that line, and what can be done with it beside it. */
export function CriterionEntry({
  index,
  last,
  isNew,
  curve,
  moveTo,
  remove,
}: {
  index: number;
  last: boolean;
  isNew: boolean;
  curve: React.ReactNode;
  moveTo: (place: number) => void;
  remove: () => void;
}) {
  const { formState } = useFormContext();
  const typed = useTyped();
  const { criteria, headings } = typed;
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (!isNew || details.current === null) return;
    details.current.open = true;
    details.current.querySelector<HTMLElement>(`[name$=".label"]`)?.focus();
  }, [isNew]);
  const criterion = criteria[index];
  if (criterion === undefined) return null;
  const name = criterion.label === "" ? `Criterion ${index + 1}` : criterion.label;
  const headingOf = (at: number) => headings.find(({ id }) => id === criteria[at]?.heading)?.label ?? "";
  const heading = headingOf(index);
  const troubled = get(formState.errors, `criteria.${index}`) !== undefined;
  const moveByKey = (event: React.KeyboardEvent) => {
    if (!event.altKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    event.preventDefault();
    moveTo(event.key === "ArrowUp" ? index - 1 : index + 1);
  };
  return (
    <li id={criterion.id} className={styles.criterion} onKeyDown={moveByKey}>
      {headings.length > 0 && (index === 0 || heading !== headingOf(index - 1)) ? (
        <h3 className={styles.heading}>{heading === "" ? "Under no heading" : heading}</h3>
      ) : null}
      <details ref={details}>
        <summary>
          <strong>{name}</strong>{" "}
          <span className={styles.sum}>{sumOf(criterion, typedWeights(typed).shares[index] ?? 0)}</span>
          {troubled ? <span className={styles.problem}> something here can’t be read yet</span> : null}
        </summary>
        <CriterionFields index={index} curve={curve} />
      </details>
      <div className={`${styles.tools} screen-only`}>
        <button type="button" className="plain" aria-disabled={index === 0} onClick={() => moveTo(index - 1)}>
          ↑<span className="visually-hidden"> Move {name} up</span>
        </button>
        <button type="button" className="plain" aria-disabled={last} onClick={() => moveTo(index + 1)}>
          ↓<span className="visually-hidden"> Move {name} down</span>
        </button>
        <button type="button" className="plain" onClick={remove}>
          Remove<span className="visually-hidden"> {name}</span>
        </button>
      </div>
    </li>
  );
}

/** "gate: below 165 g; target window, 25 % of the whole" */
function sumOf({ gate, valueFunction }: CriterionText, share: number): string {
  const limit = gateAsTyped(gate);
  const score =
    valueFunction.kind === "none"
      ? ""
      : `${valueFunctions[valueFunction.kind].label}, ${formatShare(share)} of the whole`;
  const parts = [limit === "" ? "" : `gate: ${limit}`, score].filter((part) => part !== "");
  return parts.length === 0 ? "neither gate nor score yet" : parts.join("; ");
}
