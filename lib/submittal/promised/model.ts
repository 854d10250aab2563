import type { AttachmentOwner } from "#lib/attachment";
import type { PropertyId, StatedMethod } from "#lib/claim";
import type { GateRule } from "#lib/criteria";

/** Who said or measured a figure: the columns of a row, in the order of the job. Years count from the acceptance. */
export type PromiseColumn =
  | Readonly<{ kind: "specified" | "bid" | "submitted" | "accepted" | "guaranteed" }>
  | Readonly<{ kind: "year"; year: number }>;

/** What a column holds of a property. Ends of the span in SI. */
export type PromiseEntry = Readonly<{
  property: PropertyId;
  method: StatedMethod;
  column: PromiseColumn;
  /** The figure as it is read: “118 g”. */
  value: string;
  /** How it was got and what shows it, without the value. */
  detail: string;
  /** Null for a limit and for what is no figure. */
  span: Readonly<{ low: number; high: number }> | null;
  /** Id of what was chosen, for a property that takes a choice. */
  choice: string | null;
  /** The limit, with its tolerance given to the figure; null but for what is specified. */
  limit: GateRule | null;
  /** Age of the surface in years, 0 for new; null where the figure speaks of no age. For a guarantee, how long it lasts. */
  years: number | null;
  document: string;
  page: string;
  /** Whose paper the document is. */
  owner: AttachmentOwner;
}>;

/** All that was said and measured of one property by methods that compare. */
export type PromisedRow = Readonly<{
  property: PropertyId;
  /** The methods behind its figures; empty where none is stated or the property needs none. */
  methods: readonly StatedMethod[];
  entries: readonly PromiseEntry[];
}>;
