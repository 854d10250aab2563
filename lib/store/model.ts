import type { z } from "zod";

/** What a project is made of. */
export const documentKinds = [
  "brief",
  "requirements",
  "bid",
  "campaign",
  "costing",
  "recommendation",
  "attachment",
  "specification",
  "issue",
  "people",
  "procedure",
  "committee",
  "scoresheet",
  "sealed-prices",
  "contract",
  "submittal",
  "delivery",
  "substitution",
  "release",
] as const;

export type DocumentKind = (typeof documentKinds)[number];

const once: ReadonlySet<DocumentKind> = new Set([
  ...(["brief", "requirements", "costing", "recommendation", "specification"] as const),
  ...(["people", "procedure", "committee", "contract", "delivery"] as const),
]);

/** Kinds that stand once in a project, under their kind as id. */
export const standsOnce = (kind: DocumentKind): boolean => once.has(kind);

const given: ReadonlySet<DocumentKind> = new Set(["issue"] as const);

/** Kinds that were given out: once stored they are neither replaced nor removed, whoever asks. */
export const isGivenOut = (kind: DocumentKind): boolean => given.has(kind);

/** One schema for each kind: its input is the text form that is stored, its output what the rooms compute with. */
export type Schemas = Readonly<Record<DocumentKind, z.ZodType>>;

/** Turns a stored body of one format into the next format. Pure. */
export type Upgrade = (body: unknown) => unknown;

/** Entry 0 turns format 1 into format 2, and so on; the current format is one more than the number of entries. */
export type Upgrades = Readonly<Partial<Record<DocumentKind, readonly Upgrade[]>>>;

/** Where a document stands. */
export type Place<K extends DocumentKind = DocumentKind> = Readonly<{ project: string; kind: K; id: string }>;

/** A document in the version that the editor had before their eyes. */
export type Address<K extends DocumentKind = DocumentKind> = Place<K> & Readonly<{ version: number }>;

/** `body` is the text as entered, `model` what the schema makes of it. `updatedAt` in ISO 8601, UTC. */
export type StoredDocument<S extends Schemas, K extends DocumentKind> = Readonly<{
  kind: K;
  id: string;
  version: number;
  position: number;
  updatedAt: string;
  updatedBy: string;
  body: z.input<S[K]>;
  model: z.output<S[K]>;
}>;

/** Why a text form is not taken, for causes that a person at the keyboard can bring about. Sizes in bytes of UTF-8. */
export type Refusal = Readonly<
  | { kind: "too-large"; bytes: number; limit: number }
  | { kind: "too-many-documents"; documents: number; limit: number }
  | { kind: "text-not-storable"; path: readonly string[]; codePoint: number }
  | { kind: "given-out" }
  /** A rule of the project does not allow it, such as that its criteria are frozen. */
  | { kind: "rule"; sentence: string }
>;

/** What the bytes of a kept file are known by. */
export type Digest = Readonly<{ sha256: string; bytes: number }>;

export type Saved = Readonly<{ kind: "saved"; id: string; version: number; at: string }>;
export type Gone = Readonly<{ kind: "gone" }>;
export type Refused = Readonly<{ kind: "refused"; because: Refusal }>;

/** Somebody else saved in between. What was typed is kept as a draft; `current` is what stands now. */
export type Conflict<S extends Schemas, K extends DocumentKind> = Readonly<{
  kind: "conflict";
  version: number;
  savedBy: string;
  savedAt: string;
  current: StoredDocument<S, K>;
}>;

export type SaveOutcome<S extends Schemas, K extends DocumentKind> = Saved | Conflict<S, K> | Gone | Refused;

/** What became of an act: done, refused by a rule, or lacking something that the sentences name. */
export type ActOutcome =
  | Readonly<{ kind: "done"; at: string }>
  | Readonly<{ kind: "lacks"; sentences: readonly string[] }>
  | Gone
  | Refused;

/** `documents` in the order in which they shall stand; ids only where they must stay as they are, as in an import. */
export type NewProject<S extends Schemas> = Readonly<{
  name: string;
  owner: string;
  origin: ProjectOrigin;
  documents: readonly NewDocument<S>[];
}>;

/** Invented data to look around in, or an owner's own work. */
export type ProjectOrigin = "own" | "demo";

export type NewDocument<S extends Schemas> = {
  [K in DocumentKind]: Readonly<{ kind: K; id?: string | undefined; body: z.input<S[K]> }>;
}[DocumentKind];

export type ProjectSummary = Readonly<{
  id: string;
  name: string;
  owner: string;
  origin: ProjectOrigin;
  /** Id of the organisation that it belongs to. */
  organisation: string;
  createdAt: string;
  createdBy: string;
  changedAt: string;
  changedBy: string;
  /** Number of entries in the record and the hash of the last: what to write down elsewhere to hold it to later. */
  record: Readonly<{ entries: number; head: string }>;
}>;

/** Which of the standing projects are wanted. */
export type ProjectWish = Readonly<{
  /** Words or parts of words that all have to stand in name or owner, whatever their case and accents. */
  search?: string;
  /** Only projects that come after this one. */
  after?: ProjectPlace;
  limit: number;
}>;

/** Where a project stands in the order of last changes. */
export type ProjectPlace = Readonly<{ changedAt: string; id: string }>;

/** Projects that fit a wish, the last changed first; `found` is how many fit, those before `after` included. */
export type ProjectPage = Readonly<{ projects: readonly ProjectSummary[]; found: number; more: boolean }>;

export type LoadedProject<S extends Schemas> = Readonly<{
  summary: ProjectSummary;
  documents: Readonly<{ [K in DocumentKind]: readonly StoredDocument<S, K>[] }>;
}>;

export type ProjectOutcome = Readonly<{ kind: "saved"; id: string; at: string }> | Gone | Refused;

/** What somebody typed and has not saved; it need not parse. `body` is whatever the form held. */
export type Draft = Readonly<{
  kind: DocumentKind;
  id: string;
  basedOnVersion: number;
  body: unknown;
  savedAt: string;
}>;

export type DraftOutcome = Readonly<{ kind: "kept"; at: string }> | Gone | Refused;

/** What can happen to a project or a document; "refuse" stands for a change that was tried and not made. */
export type RecordAction = "create" | "import" | "replace" | "rename" | "remove" | "restore" | "refuse";

/** What an entry of the record tells of. */
export type RecordedKind = DocumentKind | "project" | "refusal";
