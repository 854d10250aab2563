import type { Figure, Origin, Working } from "#lib/figure";
import type { In, Result } from "#lib/quantity";
import type { CostCategory } from "../categories";
import type { LinkParameter, LinkParameters } from "../costing-model";
import type { LinkId } from "../link-ids";
import type { CostConventions, PriceLine } from "../model";

/** The technical figures of a bid that links compute with. */
export type LinkFacts = Readonly<{
  /** All infill on the field. */
  infillMass: Figure<"mass">;
  /** The carpet without its infill, as the bid claims it. */
  carpetMass: Figure<"arealDensity">;
  weightClass: "heavy" | "not-heavy" | "may-be-heavy" | "unknown";
  /** How many carpets the shock layer is to stay under, as the bid claims it; null where it says nothing. */
  shockLayerLives: Readonly<{ lives: number; from: Origin }> | null;
  /** Places to be tested on each visit, as the requirements ask. */
  testLocations: number;
  hoursPerYear: In<"h/year">;
  area: In<"m²">;
}>;

/** What a link sees of a bid: its figures, the owner's parameters and the lines that count. */
export type LinkInputs = Readonly<{
  facts: LinkFacts;
  parameters: LinkParameters;
  lines: readonly PriceLine[];
  conventions: CostConventions;
}>;

/** What a link comes to: a line to add, or a line of the bid as the link changes it. */
export type LinkOutcome = Readonly<{
  kind: "adds" | "changes";
  line: PriceLine;
  working: Working;
}>;

/** One technical link: what it prices, from what, and how. */
export type TechnicalLink = Readonly<{
  id: LinkId;
  label: string;
  /** What it computes, in a sentence. */
  does: string;
  parameters: readonly LinkParameter[];
  /**
   * Words by which a line of the same purpose is known where nobody has said so, if it is paid alike: a grooming machine
   * is bought once and is no grooming. Null where words can't tell.
   */
  byName: Readonly<{ words: RegExp; paid: "once" | "again" }> | null;
  /** The item of the starting checklist that holds the same work; null where there is none. */
  item: string | null;
  category: CostCategory;
  /** A sentence where an input is missing. */
  compute: (inputs: LinkInputs) => Result<LinkOutcome, string>;
}>;
