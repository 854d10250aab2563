import type { DocumentKind } from "#lib/store";
import type { DocumentAddress } from "./save-outcome";

/** Where a document is edited, below its project. What is sealed or written by acts alone stands on no such page. */
const editedAt: Readonly<Partial<Record<DocumentKind, (id: string) => string>>> = {
  brief: () => "brief",
  requirements: () => "requirements",
  bid: (id) => `bids/${id}`,
  campaign: (id) => `field-tests/${id}`,
  costing: () => "levelling",
  recommendation: () => "recommendation/words",
  attachment: (id) => `attachments/${id}`,
  specification: () => "specification",
  people: () => "procedure/people",
  committee: () => "committee/consensus",
  contract: () => "submittals/award",
  submittal: (id) => `submittals/lines/${id}`,
  delivery: () => "submittals/deliveries",
  substitution: (id) => `submittals/substitutions/${id}`,
};

/** The page on which a document is edited; null where it is no plain document. */
export function pageOfDocument({ project, kind, id }: DocumentAddress): string | null {
  const page = editedAt[kind]?.(id);
  return page === undefined ? null : `/project/${project}/${page}`;
}

/** Where each entry of two versions is chosen; null where a kind of document has no two versions to choose from. */
export const conflictPage = ({ project, kind, id }: DocumentAddress): string | null =>
  editedAt[kind] === undefined ? null : `/project/${project}/conflict/${kind}/${id}`;
