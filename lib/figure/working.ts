/** Where an input of a working was entered or comes from, so that a page can link to it. */
export type Origin = Readonly<
  | { kind: "brief"; field: string }
  | { kind: "requirements"; field: string }
  | { kind: "claim"; bid: string; claim: string }
  | { kind: "infill-component"; bid: string; component: string }
  | { kind: "price-line"; bid: string; line: string }
  | { kind: "material"; material: string }
  | { kind: "figure"; figure: string }
  | { kind: "costing"; field: string }
  | { kind: "committee" }
  | { kind: "constant" }
  /** Asked for where the figure is shown, so that there is nowhere else to go. */
  | { kind: "given-here" }
>;

/** The bid of a price line that belongs to the owner's own alternative and to no bid. */
export type OwnersAlternative = "base-alternative";

/** One input of a working: what it is, as text with its unit, and where it comes from. */
export type WorkingInput = Readonly<{ label: string; text: string; from: Origin }>;

/** Enough to redo a figure by hand. */
export type Working = Readonly<{
  /** In words and symbols: "depth = Σ areal density ÷ bulk density". */
  formula: string;
  inputs: readonly WorkingInput[];
  assumptions: readonly string[];
  /** A citation, "derived from …", "common practice, no source" or "from memory". */
  source: string;
}>;

/** A working, or how it is told when somebody opens it: most figures are shown with theirs closed. */
export type WorkingSource = Working | (() => Working);
