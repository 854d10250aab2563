/** On which field a value was found, and over how many it is a mean; left out where nobody says. */
export type OnField = Readonly<{ field?: string | null | undefined; fields?: number | null | undefined }>;

/** Whether fields of a system were told apart in a line through their values. */
export type FieldsApart = Readonly<
  | {
      kind: "several-fields";
      /** Standard deviation from field to field, in the unit of the property. */
      betweenFields: number;
      /** Fields behind the line; values on no named field count as one each. */
      fields: number;
      named: number;
    }
  /** All values count alike; `reason` says why, in a sentence. */
  | { kind: "pooled"; reason: string }
>;
