import type { In, Interval } from "#lib/quantity";

/** How serious a finding is: two statements exclude each other, something needs an answer, or it is worth knowing. */
export type Severity = "can't be true" | "needs an answer" | "note";

/** Something in a bid that does not go together. Facts only; the words are in `explainFinding`. */
export type Finding = Readonly<
  | {
      kind: "components-against-total";
      severity: "can't be true";
      claim: string;
      sum: Interval<"kg/m²">;
      stated: Interval<"kg/m²">;
    }
  | {
      kind: "infill-buries-pile";
      severity: "can't be true";
      claim: string;
      depth: Interval<"m">;
      pileHeight: Interval<"m">;
    }
  | {
      kind: "light-infill-without-shock-layer";
      severity: "needs an answer";
      total: Interval<"kg/m²">;
      heavyAbove: In<"kg/m²">;
    }
  | { kind: "impact-by-another-method"; severity: "needs an answer"; claim: string; reason: string; ask: string }
>;
