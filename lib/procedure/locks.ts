import type { Procedure, StageId } from "./model";
import { hasReached, stageOf } from "./stages";

/** What a stage holds fast of a kind of document, and the way that is left. */
export type Lock = Readonly<{
  from: StageId;
  /** Members of the document that are held; the whole document where it is "all". */
  parts: "all" | readonly string[];
  /** Whether an amendment with a reason may change it; if not, only a step back may. */
  opens: "by-amendment" | "by-going-back" | "never";
}>;

/** Kinds of documents that a stage holds fast. A kind that is not named here is free at every stage. */
const locks: Readonly<Record<string, Lock>> = {
  requirements: { from: "frozen", parts: "all", opens: "by-amendment" },
  brief: { from: "frozen", parts: ["field", "use", "money"], opens: "by-amendment" },
  "sealed-prices": { from: "prices-open", parts: "all", opens: "never" },
  bid: { from: "evaluated", parts: "all", opens: "by-going-back" },
  costing: { from: "evaluated", parts: "all", opens: "by-going-back" },
  committee: { from: "evaluated", parts: "all", opens: "by-going-back" },
  recommendation: { from: "recommended", parts: "all", opens: "by-going-back" },
};

/** What evaluators agreed on before they knew the prices stays as it was. */
const agreedBeforePrices: Lock = { from: "prices-open", parts: "all", opens: "never" };

/** What holds a kind of document fast at the stage that a project has reached; null where it is free. */
export function lockOn(procedure: Procedure, kind: string): Lock | null {
  const lock = kind === "committee" && procedure.prices === "sealed" ? agreedBeforePrices : locks[kind];
  return lock !== undefined && hasReached(stageOf(procedure), lock.from) ? lock : null;
}

/** Of a document only what a lock holds, so that two versions can be held against each other. */
export function heldParts({ parts }: Lock, document: unknown): unknown {
  if (parts === "all" || typeof document !== "object" || document === null) return document;
  return Object.fromEntries(Object.entries(document).filter(([key]) => parts.includes(key)));
}
