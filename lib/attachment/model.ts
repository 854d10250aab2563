/** The kinds of files that are kept: what paper comes as, and pictures of it. SVG is none, as it may hold a script. */
export const fileKinds = {
  pdf: { label: "PDF", mediaType: "application/pdf", endings: ["pdf"] },
  png: { label: "PNG picture", mediaType: "image/png", endings: ["png"] },
  jpeg: { label: "JPEG picture", mediaType: "image/jpeg", endings: ["jpg", "jpeg"] },
} as const satisfies Readonly<
  Record<string, Readonly<{ label: string; mediaType: string; endings: readonly [string, ...string[]] }>>
>;

export type FileKind = keyof typeof fileKinds;

/** Whose paper it is: of one bid, of one submittal, of one request for substitution, or of the project. */
export type AttachmentOwner = Readonly<
  | { kind: "project" }
  | { kind: "bid"; bid: string }
  | { kind: "submittal"; submittal: string }
  | { kind: "substitution"; substitution: string }
>;

/** What is known of a file that is kept; its bytes lie with the store, under their SHA-256. */
export type Attachment = Readonly<{
  /** As the file is called, made safe. */
  name: string;
  /** As bids and reports call the document: “Test report 14”. Empty where the name of the file does. */
  title: string;
  of: AttachmentOwner;
  kind: FileKind;
  bytes: number;
  sha256: string;
  note: string;
}>;
