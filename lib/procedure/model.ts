/** How far a project has come; each stage fixes more than the one before. */
export type StageId = "draft" | "frozen" | "prices-open" | "evaluated" | "recommended" | "awarded";

/** A person as they stood when they did something. */
export type Doer = Readonly<{ id: string; name: string }>;

/** One move to a stage. Times are ISO 8601 in UTC, by the clock of the server. */
export type StageStep = Readonly<{
  stage: Exclude<StageId, "draft">;
  at: string;
  by: Doer;
  /** Why, where a reason is asked for, or what else should be remembered. */
  note: string;
  /** What the completeness check said when the criteria were frozen, so that nobody can say it was not seen. */
  accepted: readonly string[];
  /** Id of the bid that the award goes to; empty elsewhere. */
  bid: string;
  /** The key of sealed prices, made public with their opening; empty where none were sealed. */
  key: string;
}>;

/** One entry of a document that an amendment changed, as people read it. */
export type FieldChange = Readonly<{ field: string; from: string; to: string }>;

/** A change of what was frozen, with its reason. */
export type Amendment = Readonly<{
  at: string;
  by: Doer;
  reason: string;
  document: AmendedKind;
  changes: readonly FieldChange[];
}>;

/** Documents that freezing holds fast, as a whole or in part. */
export type AmendedKind = "brief" | "requirements";

/** The stages a project has gone through and what was amended since it was frozen. */
export type Procedure = Readonly<{
  /** Whether prices stand in the bids as they are entered, or sealed until they are opened. */
  prices: "open" | "sealed";
  steps: readonly StageStep[];
  amendments: readonly Amendment[];
}>;

/** Text that nobody can read without its key. */
export type Sealed = Readonly<{
  algorithm: "AES-256-GCM";
  /** 12 bytes, base64url. */
  nonce: string;
  /** Sealed bytes with the 16 bytes of the tag behind them, base64url. */
  text: string;
}>;
