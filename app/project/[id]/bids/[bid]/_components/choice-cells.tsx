"use client";
import { useWatch } from "react-hook-form";
import {
  accreditations,
  completeMethod,
  completeProperty,
  evidenceLevels,
  matchAccreditation,
  matchEvidence,
  matchMethod,
  matchProperty,
  matchTestedBuild,
  methodOf,
  type Property,
  properties,
  propertyGroups,
  propertyOf,
  testedBuilds,
  testMethods,
} from "#lib/claim";
import { type Cell, SelectCell } from "./claim-cell";
import { type Suggestion, TypeAheadCell } from "./type-ahead-cell";

const option = ({ id, label }: Readonly<{ id: string; label: string }>) => (
  <option key={id} value={id}>
    {label}
  </option>
);

/** Built once: sixty rows share the same elements. */
export const propertyOptions = propertyGroups.map(({ id, label }) => (
  <optgroup key={id} label={label}>
    {properties.filter(({ group }) => group === id).map(option)}
  </optgroup>
));

const propertySuggestions: readonly Suggestion[] = propertyGroups.flatMap(({ id: groupId, label: hint }) =>
  properties.filter(({ group }) => group === groupId).map(({ id, label }) => ({ id, label, hint })),
);

function propertyLabel(text: string): string {
  const matched = matchProperty(text);
  return matched === null ? text : propertyOf(matched).label;
}

/** What is asked for and not claimed yet is offered first. */
export function PropertyCell({ cell, missing }: { cell: Cell; missing: readonly Property[] }) {
  const asked = new Set<string>(missing.map(({ id }) => id));
  const first = missing.map(({ id, label }) => ({ id, label, hint: "Asked for, not claimed yet" }));
  return (
    <TypeAheadCell
      cell={cell}
      suggestions={[...first, ...propertySuggestions.filter(({ id }) => !asked.has(id))]}
      complete={completeProperty}
      labelOf={propertyLabel}
    />
  );
}

/** The property that a row is about as far as its text says one. */
export function usePropertyOf({ control, index }: Cell): Property | null {
  const text = useWatch({ control, name: `claims.${index}.property`, exact: true });
  const matched = matchProperty(text);
  return matched === null ? null : propertyOf(matched);
}

function methodLabel(text: string): string {
  const matched = matchMethod(text);
  if (matched === "not-stated") return "not stated";
  return matched === null ? text : methodOf(matched).designation;
}

const notStated: Suggestion = { id: "not-stated", label: "not stated", hint: "The bid names no method" };

/** Methods that may stand behind the property come first; any other can be named, for bids name what they name. */
export function MethodCell({ cell }: { cell: Cell }) {
  const fitting = new Set<string>(usePropertyOf(cell)?.methods ?? []);
  const methods = testMethods.map(({ id, designation, name }): Suggestion => ({ id, label: designation, hint: name }));
  return (
    <TypeAheadCell
      cell={cell}
      suggestions={[
        ...methods.filter(({ id }) => fitting.has(id)),
        notStated,
        ...methods.filter(({ id }) => !fitting.has(id)),
      ]}
      complete={completeMethod}
      labelOf={methodLabel}
    />
  );
}

const evidenceIds = new Set<string>(evidenceLevels.map(({ id }) => id));
const evidenceOptions = evidenceLevels.map(option);

function unlistedEvidence(text: string): string {
  if (text === "") return "Choose";
  const matched = evidenceLevels.find(({ id }) => id === matchEvidence(text));
  return matched === undefined ? `“${text}”, not a level of evidence` : matched.label;
}

export function EvidenceCell({ cell }: { cell: Cell }) {
  return (
    <SelectCell cell={cell} known={(text) => evidenceIds.has(text)} unlisted={unlistedEvidence}>
      {evidenceOptions}
    </SelectCell>
  );
}

const accreditationIds = new Set<string>(accreditations.map(({ id }) => id));
const buildIds = new Set<string>(testedBuilds.map(({ id }) => id));

export function AccreditationCell({ cell }: { cell: Cell }) {
  const labelled = (text: string) => accreditations.find(({ id }) => id === matchAccreditation(text))?.label;
  return (
    <SelectCell
      cell={cell}
      known={(text) => accreditationIds.has(text)}
      unlisted={(text) => labelled(text) ?? `“${text}”, not one of the answers`}
    >
      {accreditations.map(option)}
    </SelectCell>
  );
}

export function BuildCell({ cell }: { cell: Cell }) {
  const labelled = (text: string) => testedBuilds.find(({ id }) => id === matchTestedBuild(text))?.label;
  return (
    <SelectCell
      cell={cell}
      known={(text) => buildIds.has(text)}
      unlisted={(text) => labelled(text) ?? `“${text}”, not one of the answers`}
    >
      {testedBuilds.map(option)}
    </SelectCell>
  );
}
