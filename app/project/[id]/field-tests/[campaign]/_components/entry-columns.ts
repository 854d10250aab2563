import type { DimensionName } from "#lib/quantity";

/** A column of a table in which measurements are typed. `field` is the path inside a row. */
export type EntryColumn = Readonly<{
  field: string;
  label: string;
  dimension?: DimensionName;
  width: "wide" | "usual" | "narrow";
}>;

export const dropColumns = [
  { field: "label", label: "Location", width: "wide" },
  { field: "x", label: "x", dimension: "coordinate", width: "usual" },
  { field: "y", label: "y", dimension: "coordinate", width: "usual" },
  { field: "drops.0", label: "Drop 1", width: "narrow" },
  { field: "drops.1", label: "Drop 2", width: "narrow" },
  { field: "drops.2", label: "Drop 3", width: "narrow" },
  { field: "note", label: "Note", width: "wide" },
] as const satisfies readonly EntryColumn[];

export const depthColumns = [
  { field: "x", label: "x", dimension: "coordinate", width: "usual" },
  { field: "y", label: "y", dimension: "coordinate", width: "usual" },
  { field: "depth", label: "Depth of infill", dimension: "length", width: "usual" },
] as const satisfies readonly EntryColumn[];
