"use client";
import { useEffect, useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { costCategories, technicalLinks } from "#lib/cost";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import type { UncertaintyValues } from "./uncertainty-values";

/** A bid with the lines that count, by their names. */
export type NamedBid = Readonly<{
  id: string;
  letter: string;
  lines: readonly Readonly<{ id: string; label: string; hasLife: boolean }>[];
}>;

export type TargetKind = UncertaintyValues["uncertainty"]["inputs"][number]["target"]["kind"];

const figuresOfLine: readonly Choice[] = [
  { value: "price", label: "The price" },
  { value: "quantity", label: "The quantity" },
  { value: "unit-price", label: "The price of one unit" },
  { value: "renewal-price", label: "The price of renewals" },
  { value: "removal-price", label: "The price of removal" },
];
const figuresOfParts = figuresOfLine.filter(({ value }) => ["price", "renewal-price", "removal-price"].includes(value));
const categories: readonly Choice[] = Object.entries(costCategories).map(([value, { label }]) => ({ value, label }));
const purposes: readonly Choice[] = Object.values(technicalLinks).map(({ id, label }) => ({ value: id, label }));
/** Which figure is meant, by the kind of what is uncertain. */
export function TargetFields({ name, kind, bids }: { name: string; kind: TargetKind; bids: readonly NamedBid[] }) {
  switch (kind) {
    case "line":
      return (
        <>
          <BidAndLine name={name} bids={bids} fits="any" />
          <ChoiceField name={`${name}.part`} label="Which figure of it" choices={figuresOfLine} />
        </>
      );
    case "category":
      return <ChoiceField name={`${name}.category`} label="Category" choices={categories} />;
    case "parts":
      return <ChoiceField name={`${name}.part`} label="Which figure of them" choices={figuresOfParts} />;
    case "purpose":
      return <ChoiceField name={`${name}.purpose`} label="Spent on" choices={purposes} />;
    case "life":
      return <BidAndLine name={name} bids={bids} fits="with-life" />;
    case "growth":
      return <BidAndLine name={name} bids={bids} fits="any" />;
    case "real-rate":
      return null;
  }
}

function BidAndLine({ name, bids, fits }: { name: string; bids: readonly NamedBid[]; fits: "any" | "with-life" }) {
  const { setValue } = useFormContext();
  const bid: unknown = useWatch({ name: `${name}.bid` });
  const of = useRef(bid);
  useEffect(() => {
    if (of.current === bid) return;
    of.current = bid;
    setValue(`${name}.line`, ""); // a line of one bid is none of another
  }, [bid, name, setValue]);
  const lines = bids.find(({ id }) => id === bid)?.lines ?? [];
  return (
    <>
      <ChoiceField
        name={`${name}.bid`}
        label="Bid"
        choices={bids.map(({ id, letter }) => ({ value: id, label: `Bid ${letter}` }))}
      />
      <ChoiceField
        key={String(bid)}
        name={`${name}.line`}
        label="Price line"
        choices={[
          { value: "", label: "Choose a line" },
          ...lines.filter(({ hasLife }) => fits === "any" || hasLife).map(({ id, label }) => ({ value: id, label })),
        ]}
      />
    </>
  );
}
