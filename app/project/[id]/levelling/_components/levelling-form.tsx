"use client";
import { useRef, useState } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import type { CostingText } from "#lib/evaluation";
import { CostingForm } from "../../_components/price/costing-form";
import type { CostingStart } from "../../_components/price/costing-start";
import { ChecklistFields } from "./checklist-fields";
import { EntryDetails } from "./entry-details";
import { filledLevelling, type LevelledValues } from "./levelled-values";
import styles from "./levelling.module.css";
import { cellSelect, type LevelledBid, ScopeMatrix } from "./scope-matrix";

/** The owner's levelling of all bids. */
export function LevellingForm({ start, bids }: { start: CostingStart<LevelledValues>; bids: readonly LevelledBid[] }) {
  const [shared] = useState(() => ({
    parts: ["levelling", "checklist"] as const,
    filled: (body: unknown) => filledLevelling(body as CostingText, bids),
  }));
  return (
    <CostingForm start={start} shared={shared} label="Levelling">
      <section aria-labelledby="scope">
        <h2 id="scope">Scope, item by item</h2>
        <p className="screen-only">
          Go through the checklist with each bid beside you. The figures above move as soon as a decision is saved.
        </p>
        <p className={`${styles.keys} screen-only`}>
          The arrow keys move between the cells, the first letter of a standing sets it, Enter opens its details, and
          Escape closes them.
        </p>
        <Scope bids={bids} />
      </section>
      <section aria-labelledby="checklist" className="screen-only">
        <h2 id="checklist">The checklist</h2>
        <ChecklistFields bids={bids.map(({ id }) => id)} />
      </section>
    </CostingForm>
  );
}

function Scope({ bids }: { bids: readonly LevelledBid[] }) {
  const { control } = useFormContext<LevelledValues>();
  const [opened, setOpened] = useState<number | null>(null);
  const items = useWatch({ control, name: "checklist" });
  const section = useRef<HTMLDivElement>(null);
  const bid = opened === null ? undefined : bids[opened % bids.length];
  const item = opened === null ? undefined : items[Math.floor(opened / bids.length)];
  const close = () => {
    setOpened(null);
    if (opened === null || section.current === null) return;
    cellSelect(section.current, { row: Math.floor(opened / bids.length), column: opened % bids.length })?.focus();
  };
  return (
    <div ref={section}>
      <ScopeMatrix
        bids={bids}
        opened={opened}
        open={(index) => (index === opened ? close() : setOpened(index))}
        details={
          opened === null || bid === undefined || item === undefined ? null : (
            <EntryDetails key={opened} index={opened} item={item.label} bid={bid} close={close} />
          )
        }
      />
    </div>
  );
}
