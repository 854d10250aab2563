import { atLeastAsStrong, type EvidenceLevel } from "#lib/claim";

/** The evidence of something that is not there. */
export const noEvidence: EvidenceLevel = "stated";

/** What is worked out from several claims is no better shown than the least shown of them. */
export const weakest = (levels: readonly EvidenceLevel[]): EvidenceLevel =>
  levels.reduce((weak, level) => (atLeastAsStrong(level, weak) ? weak : level), levels[0] ?? noEvidence);
