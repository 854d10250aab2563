/** What became of a file that was sent. */
export type UploadOutcome = Readonly<
  | { kind: "kept"; id: string; name: string }
  | { kind: "supplied"; ids: readonly string[] }
  | { kind: "refused"; problem: string }
>;
