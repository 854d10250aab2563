"use client";
import { useWatch } from "react-hook-form";
import {
  accreditations,
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

const propertyIds = new Set<string>(properties.map(({ id }) => id));

function unlistedProperty(text: string): string {
  if (text === "") return "Choose the property";
  const matched = matchProperty(text);
  return matched === null ? `“${text}”, not in the catalogue` : propertyOf(matched).label;
}

export function PropertyCell({ cell, missing }: { cell: Cell; missing: readonly Property[] }) {
  return (
    <SelectCell cell={cell} known={(text) => propertyIds.has(text)} unlisted={unlistedProperty}>
      {missing.length === 0 ? null : <optgroup label="Asked for, not claimed yet">{missing.map(option)}</optgroup>}
      {propertyOptions}
    </SelectCell>
  );
}

/** The property that a row is about as far as its text says one. */
export function usePropertyOf({ control, index }: Cell): Property | null {
  const text = useWatch({ control, name: `claims.${index}.property`, exact: true });
  const matched = matchProperty(text);
  return matched === null ? null : propertyOf(matched);
}

const methodIds = new Set<string>(["not-stated", ...testMethods.map(({ id }) => id)]);

function unlistedMethod(text: string): string {
  const matched = matchMethod(text);
  if (matched === "not-stated") return "not stated";
  return matched === null ? `“${text}”, not in the register` : methodOf(matched).designation;
}

/** Methods that may stand behind the property come first; any other can be chosen, for bids name what they name. */
export function MethodCell({ cell }: { cell: Cell }) {
  const fitting = new Set<string>(usePropertyOf(cell)?.methods ?? []);
  const methods = testMethods.map(({ id, designation }) => ({ id, label: designation }));
  const first = methods.filter(({ id }) => fitting.has(id));
  return (
    <SelectCell cell={cell} known={(text) => methodIds.has(text)} unlisted={unlistedMethod}>
      <option value="not-stated">not stated</option>
      {first.length === 0 ? null : <optgroup label="For this property">{first.map(option)}</optgroup>}
      <optgroup label="Others">{methods.filter(({ id }) => !fitting.has(id)).map(option)}</optgroup>
    </SelectCell>
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
