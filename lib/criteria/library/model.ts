import type { CriterionText } from "../schema";

/** How well a usual limit is founded; the words are what people read. */
export const limitStandings = {
  published: "as published",
  quoted: "as quoted in trade press",
  memory: "from memory; look it up before you rely on it",
  practice: "common practice, no source",
  none: "no published limit: yours to set",
} as const;

export type LimitStanding = keyof typeof limitStandings;

/** A limit or a usual value with where it comes from. `source` is empty where nobody published one. */
export type UsualLimit = Readonly<{ says: string; source: string; standing: LimitStanding }>;

/** Headings that the library sorts its criteria by; a profile weighs by them. */
export const libraryHeadings = {
  impact: "Falls and impact",
  footing: "Footing, skin and ball",
  infill: "Infill that stays",
  "water-heat": "Water and heat",
  health: "Health and environment",
  warranty: "Warranty and references",
  cost: "Upkeep and cost",
} as const;

export type LibraryHeading = keyof typeof libraryHeadings;

/** A criterion to start from. Every figure of it is the owner's to change. */
export type LibraryEntry = Readonly<{
  /** Becomes the id of the criterion. */
  id: string;
  heading: LibraryHeading;
  criterion: Readonly<Omit<CriterionText, "id" | "heading" | "weight">>;
  /** Points to start with, as text; "0" for a criterion that only gates. */
  points: string;
  limits: readonly UsualLimit[];
  /** How the figure is found, in words. */
  method: string;
  /** What to ask of the bidder as proof. */
  asked: string;
  /** What the figure does not say; empty where there is nothing to warn of. */
  caution: string;
}>;

/** How a profile differs from the library on one criterion. */
export type ProfileEntry = Readonly<{
  entry: string;
  points: string;
  /** Rules that differ for this use, with their own source. */
  changes: Readonly<Partial<Pick<LibraryEntry["criterion"], "gate" | "valueFunction" | "source" | "evidence">>>;
}>;

/** A full set of criteria for one kind of use, as a starting point. */
export type Profile = Readonly<{
  id: string;
  label: string;
  /** For which field and whose play. */
  use: string;
  /** Why it looks as it does, with sources. */
  founded: readonly UsualLimit[];
  headings: readonly Readonly<{ id: LibraryHeading; points: string }>[];
  entries: readonly ProfileEntry[];
}>;
