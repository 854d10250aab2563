"use client";
import { useId, useState } from "react";
import { useWatch } from "react-hook-form";
import { type Property, shownIn } from "#lib/claim";
import { type DimensionName, formatInterval, intervalOf, parseQuantity } from "#lib/quantity";
import { unitSuggestions } from "../../../../../_components/form/unit-suggestions";
import { usePropertyOf } from "./choice-cells";
import { type Cell, pathOf, SelectCell, TextCell } from "./claim-cell";
import styles from "./ledger.module.css";
import { readingText } from "./reading-text";

/** What is claimed: a figure with its unit, one of the property's answers, or words. */
export function FigureCell({ cell }: { cell: Cell }) {
  const property = usePropertyOf(cell);
  if (property?.kind === "choice") return <AnswerCell cell={cell} choices={property.choices} />;
  return <WrittenCell cell={cell} property={property?.kind === "quantity" ? property : null} />;
}

function AnswerCell({ cell, choices }: { cell: Cell; choices: Extract<Property, { kind: "choice" }>["choices"] }) {
  const labelled = (text: string) => choices.find(({ label }) => label.toLowerCase() === text.trim().toLowerCase());
  return (
    <SelectCell
      cell={cell}
      known={(text) => text === "" || choices.some(({ id }) => id === text)}
      unlisted={(text) => labelled(text)?.label ?? `“${text}”, not one of the answers`}
    >
      <option value="">As in the bid’s words</option>
      {choices.map(({ id, label }) => (
        <option key={id} value={id}>
          {label}
        </option>
      ))}
    </SelectCell>
  );
}

type QuantityProperty = Extract<Property, { kind: "quantity" }>;

/** One control for figures and words, so that it keeps the focus when the property beside it becomes known. */
function WrittenCell({ cell, property }: { cell: Cell; property: QuantityProperty | null }) {
  const list = useId();
  const [suggestions, setSuggestions] = useState<readonly string[]>([]);
  return (
    <TextCell
      cell={cell}
      list={list}
      onInput={(text) => setSuggestions(property === null ? [] : unitSuggestions(text, property.dimension))}
      reading={property === null ? null : <FigureReading cell={cell} property={property} />}
    >
      <datalist id={list}>
        {suggestions.map((suggestion) => (
          <option key={suggestion} value={suggestion} />
        ))}
      </datalist>
    </TextCell>
  );
}

/** How the figure was read, in both systems of units, and whether it lies outside what is usual. */
function FigureReading({ cell, property }: { cell: Cell; property: QuantityProperty }) {
  const text = useWatch({ control: cell.control, name: pathOf(cell), exact: true }) ?? "";
  const words = useWatch({ control: cell.control, name: `claims.${cell.index}.words`, exact: true }) ?? "";
  if (text.trim() === "")
    return words.trim() === "" ? null : <span className={styles.reading}>The bid’s words stand for it.</span>;
  const reading = readingText(property.dimension, text, unitsOf(property));
  if (reading === null) return null;
  const unusual = outsideUsual(property, text);
  return (
    <>
      <span className={styles.reading}>{reading}</span>
      {unusual === null ? null : <span className={styles.unusual}>{unusual}</span>}
    </>
  );
}

/** Both systems, each in the unit that the trade writes for the property. */
const unitsOf = (property: QuantityProperty) => (["us", "metric"] as const).map((system) => shownIn(property, system));

/** A figure far from what is usual is more likely a slip of unit or digit; it is pointed out, never refused. */
function outsideUsual(property: QuantityProperty, text: string): string | null {
  const { dimension, plausible } = property;
  const parsed = parseQuantity<DimensionName>(dimension, text);
  if (!parsed.ok || plausible === null) return null;
  const { low, high } = intervalOf(parsed.value.reading);
  if (high >= plausible.low && low <= plausible.high) return null;
  const usual = unitsOf(property).map((system) => formatInterval<DimensionName>(dimension, plausible, system));
  return `Outside the usual ${[...new Set(usual)].join(" (")}${usual[0] === usual[1] ? "" : ")"}: look at unit and digits once more. Source: ${plausible.source}.`;
}
